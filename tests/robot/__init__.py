"""A robot that works at the real window by chance: `python -m tests.robot` for a day of eight hours."""

"""For all tests: no display, and never the real data folder."""

from __future__ import annotations

import os
import tempfile

from hypothesis import settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
# Set before anything of ours is imported, and inherited by the programs that tests start.
_FOLDER = tempfile.mkdtemp(prefix="calibrator-")
for name in ("XDG_DATA_HOME", "APPDATA", "LOCALAPPDATA"):
    os.environ[name] = _FOLDER


# The same examples on every automatic run, so that it fails for what was changed; new ones whenever a person runs it.
settings.register_profile("automatic", derandomize=True, deadline=None)
if os.environ.get("CI"):
    settings.load_profile("automatic")

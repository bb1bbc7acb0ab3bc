"""A trial of feeders: several people fill one scoop from one bag, to see whose hand is heavy and whose is light."""

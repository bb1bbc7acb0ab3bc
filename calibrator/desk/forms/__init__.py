"""Forms over the nouns: each loads a telling, says what is missing, and gives back the next telling."""

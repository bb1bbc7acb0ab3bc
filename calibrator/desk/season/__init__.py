"""The parts of the season's page: what they show, in which words, with which pictures."""

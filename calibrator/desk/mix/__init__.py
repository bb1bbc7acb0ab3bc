"""The parts of the page on checks of the mix: this mix, bags, history, own line, instruments."""

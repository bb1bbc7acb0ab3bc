"""Every phrase that stands on paper. Placeholders in braces are filled in after translation."""

from __future__ import annotations


def QT_TRANSLATE_NOOP(_context: str, literal: str) -> str:  # noqa: N802
    """Marks a phrase for the extractor, which knows it by this name; Qt's own tells no type."""
    return literal


# Shared
LOT = QT_TRANSLATE_NOOP("Prints", "LOT")
ONLY_THIS_LOT = QT_TRANSLATE_NOOP("Prints", "ONLY FOR THIS LOT")
STOP = QT_TRANSLATE_NOOP("Prints", "STOP")
WEIGHED_IN = QT_TRANSLATE_NOOP("Prints", "Weighed in {date}")
MADE = QT_TRANSLATE_NOOP("Prints", "Made {date}")
ARRIVED = QT_TRANSLATE_NOOP("Prints", "Arrived {date}")
BY = QT_TRANSLATE_NOOP("Prints", "by {who}")
PAGE_OF = QT_TRANSLATE_NOOP("Prints", "Page {page} of {pages}")
PRINTED = QT_TRANSLATE_NOOP("Prints", "Printed {date}")

# Scoop label
RIM_EDGE = QT_TRANSLATE_NOOP("Prints", "RIM EDGE")
SCOOP_NAME = QT_TRANSLATE_NOOP("Prints", "Scoop: {name}")
LABEL_NUMBER = QT_TRANSLATE_NOOP("Prints", "Label {number}")
LABEL_REPLACES = QT_TRANSLATE_NOOP("Prints", "Label {number} · replaces {old}")
FULL_SCOOPS_MORE = QT_TRANSLATE_NOOP("Prints", "+ {count} level")
PIECE_OF = QT_TRANSLATE_NOOP("Prints", "piece {piece} of {pieces}")
LABEL_SHEET = QT_TRANSLATE_NOOP("Prints", "Scoop labels")
LABEL_HOW = QT_TRANSLATE_NOOP(
    "Prints",
    "Cut along the thin lines. Dry the scoop, put the black edge flush with the rim and press down the wall. "
    "Take off every older label and line.",
)
WRAP_HOW = QT_TRANSLATE_NOOP(
    "Prints",
    "Cut along the thin lines. Dry the scoop, put the black edge flush with the rim all round and let each "
    "end overlap to the dashed line, lines level. Take off every older label and line.",
)
CHECK_BAR = QT_TRANSLATE_NOOP(
    "Prints",
    "Measure both bars first: one 50 mm, one 2 in. If either is off, throw the sheet away and print "
    "again at 100 %, without “fit to page”.",
)

# Wall chart
MIXING_CHART = QT_TRANSLATE_NOOP("Prints", "Mixing chart")
CHART_NUMBER = QT_TRANSLATE_NOOP("Prints", "Chart {number}")
CHART_REPLACES = QT_TRANSLATE_NOOP("Prints", "Take down chart {old}")
OTHER_LOT = QT_TRANSLATE_NOOP("Prints", "Another lot number on the bag? Stop. Weigh in again.")
CALVES = QT_TRANSLATE_NOOP("Prints", "Calves")
BATCHES = QT_TRANSLATE_NOOP("Prints", "Batches")
WATER = QT_TRANSLATE_NOOP("Prints", "Water")
WATER_EACH = QT_TRANSLATE_NOOP("Prints", "Water each")
TEMPERATURE = QT_TRANSLATE_NOOP("Prints", "Water at")
POWDER = QT_TRANSLATE_NOOP("Prints", "Powder")
POWDER_EACH = QT_TRANSLATE_NOOP("Prints", "Powder each")
SCOOPFULS = QT_TRANSLATE_NOOP("Prints", "or scoopfuls")
SCOOPFULS_EACH = QT_TRANSLATE_NOOP("Prints", "or scoopfuls each")
TODAY = QT_TRANSLATE_NOOP("Prints", "TODAY")
LEVEL = QT_TRANSLATE_NOOP("Prints", "level")
TO_THE_LINE = QT_TRANSLATE_NOOP("Prints", "to the line")
TAPPED = QT_TRANSLATE_NOOP("Prints", "tapped")
LINE_DOWN = QT_TRANSLATE_NOOP("Prints", "water line {length} below the rim")
MIX_LINE_DOWN = QT_TRANSLATE_NOOP("Prints", "mix line {length} below the rim")
MAKES = QT_TRANSLATE_NOOP("Prints", "makes {volume}")
RUNS_OVER = QT_TRANSLATE_NOOP("Prints", "too much for {vessel}")
THE_VESSEL = QT_TRANSLATE_NOOP("Prints", "the vessel")
PER_CALF_MIX = QT_TRANSLATE_NOOP("Prints", "{volume} of mix per calf")
PER_CALF_WATER = QT_TRANSLATE_NOOP("Prints", "{volume} of water per calf")
RATE_ON_WATER = QT_TRANSLATE_NOOP("Prints", "{powder} of powder on top of every {volume} of water")
RATE_MADE_UP = QT_TRANSLATE_NOOP("Prints", "{powder} of powder made up with water to {volume}")
RATE_PER_FINISHED = QT_TRANSLATE_NOOP("Prints", "{powder} of powder in every {volume} of mix as fed")
RATE_SOLIDS = QT_TRANSLATE_NOOP("Prints", "{solids} solids, powder by weight of mix")
RATE_DRY_MATTER = QT_TRANSLATE_NOOP("Prints", "{solids} dry matter by weight of mix")
VESSEL = QT_TRANSLATE_NOOP("Prints", "mixed in {vessel}")

# Cautions
SCALD = QT_TRANSLATE_NOOP("Prints", "Water of {limit} or hotter scalds. Keep people and calves away from it.")
FOLLOW_LABEL = QT_TRANSLATE_NOOP("Prints", "Follow the product's label. It comes before this sheet.")
MEDICATED = QT_TRANSLATE_NOOP(
    "Prints", "MEDICATED powder: feed only as its label and your veterinarian say. Mind the withdrawal time."
)
ASK_VET = QT_TRANSLATE_NOOP("Prints", "Sick or weak calf? Ask the veterinarian.")
NO_TUBE = QT_TRANSLATE_NOOP("Prints", "No milk or replacer by tube unless the veterinarian says so.")
FEED_AT_ONCE = QT_TRANSLATE_NOOP("Prints", "Feed at once and keep the mix moving.")
DUST = QT_TRANSLATE_NOOP("Prints", "Do not breathe the dust; no flames near it.")

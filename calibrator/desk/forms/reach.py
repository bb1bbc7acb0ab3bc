"""The sizes that things on a farm can have, in g, mL and °C, both ends allowed: beyond them a finger or a unit slipped.

Wide of whatever is in use; common practice, no source. A field refuses what lies outside and says the limit. What lies
outside of a `USUAL` reach is asked about once, and kept.
"""

from __future__ import annotations

Reach = tuple[float, float]

BAG_G: Reach = (500.0, 100_000.0)
TOTE_G: Reach = (20_000.0, 2_000_000.0)
PACKAGE_G: Reach = (BAG_G[0], TOTE_G[1])
FEEDING_G: Reach = (1.0, 5_000.0)  # powder that one calf gets at one feeding
ADDITIVE_G: Reach = (0.05, 2_000.0)  # of an additive
FEEDING_ML: Reach = (50.0, 20_000.0)  # what one calf drinks at one feeding
SCOOP_ML: Reach = (5.0, 10_000.0)
USUAL_SCOOP_ML: Reach = (236.5, 3_785.5)  # 1/4 qt to 1 gal
USUAL_SCOOP_MM: Reach = (38.0, 254.1)  # inside, across or high: 1 1/2 to 10 in
USUAL_WATER_C: Reach = (4.0, 50.0)  # that is weighed in a scoop
WATER_IN_SCOOP_G: Reach = (1.0, 12_000.0)
JUG_ML: Reach = (10.0, 30_000.0)
JUG_G: Reach = (5.0, 40_000.0)  # a full one, or the water in it
VESSEL_ML: Reach = (100.0, 50_000_000.0)
MIX_G: Reach = (1.0, 200_000.0)  # powder or water of a mix that is weighed on a kitchen scale
ROOM_C: Reach = (-40.0, 60.0)
OLDEST_POWDER_YEARS = 5
"""Between the days on which powder was made and arrived; most keeps for a year."""

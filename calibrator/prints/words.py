"""Every phrase that stands on paper. Placeholders in braces are filled in after translation."""

from __future__ import annotations

from calibrator.marked import QT_TRANSLATE_NOOP

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
SHEET_NUMBER = QT_TRANSLATE_NOOP("Prints", "Print no. {number}")

# Scoop label
RIM_EDGE = QT_TRANSLATE_NOOP("Prints", "RIM EDGE")
LINE_BELOW_RIM = QT_TRANSLATE_NOOP("Prints", "Line {length} below the rim")
LINES_BELOW_RIM = QT_TRANSLATE_NOOP("Prints", "Lines below the rim")
SCOOP_NAME = QT_TRANSLATE_NOOP("Prints", "Scoop: {name}")
ONE_SHAKE = QT_TRANSLATE_NOOP("Prints", "Even it at the line with one shake")
LABEL_REPLACES = QT_TRANSLATE_NOOP("Prints", "Print no. {number} · replaces no. {old}")
FULL_SCOOPS_MORE = QT_TRANSLATE_NOOP("Prints", "{count} struck at the rim + 1 to here")
EQUAL_SCOOPS_TO_HERE = QT_TRANSLATE_NOOP("Prints", "{count} to here")
COUNT_TO_LINE = QT_TRANSLATE_NOOP("Prints", "{mass} = {count} to the line")
COUNT_TO_LINE_AND_HALF = QT_TRANSLATE_NOOP("Prints", "{mass} = {count} to the line + 1 to ½")
MEDICATED_POWDER = QT_TRANSLATE_NOOP("Prints", "MEDICATED powder: see the bag's label")
RECKONED = QT_TRANSLATE_NOOP("Prints", "Other lines: worked out, not weighed")
LEVEL_ALONE = QT_TRANSLATE_NOOP("Prints", "{count} level")
STRUCK_LEVEL = QT_TRANSLATE_NOOP("Prints", "Struck level: no line")
PIECE_OF = QT_TRANSLATE_NOOP("Prints", "piece {piece} of {pieces}")
LABEL_SHEET = QT_TRANSLATE_NOOP("Prints", "Scoop labels")
LABEL_HOW = QT_TRANSLATE_NOOP(
    "Prints",
    "Cut along the thin lines. Dry the scoop and stick the label on its outside, the black edge flush with the rim. "
    "Where the powder does not show through, copy the lines to the inside with the marker. "
    "Take off labels and lines of lots that are no longer fed.",
)
LEVEL_HOW = QT_TRANSLATE_NOOP(
    "Prints",
    "Cut along the thin lines. Dry the scoop and stick the label on its outside, the black edge flush with the rim. "
    "Fill the scoop and strike it level. Take off labels and lines of lots that are no longer fed.",
)
WRAP_HOW = QT_TRANSLATE_NOOP(
    "Prints",
    "Cut along the thin lines. Dry the scoop, put the black edge flush with the rim all round its outside and let "
    "each end overlap to the dashed line, lines level. Where the powder does not show through, copy the lines to the "
    "inside with the marker. Take off labels and lines of lots that are no longer fed.",
)
CHECK_BAR = QT_TRANSLATE_NOOP(
    "Prints",
    "Measure both bars first: one 50 mm, one 2 in (50.8 mm). If either is off, throw the sheet away and print "
    "again at 100 %, without “fit to page”.",
)
CHECK_BAR_METRIC = QT_TRANSLATE_NOOP(
    "Prints",
    "Measure both bars first: each is 50 mm. If either is off, throw the sheet away and print again at 100 %, without "
    "“fit to page”.",
)

# Wall chart
WALL_CHART = QT_TRANSLATE_NOOP("Prints", "Wall chart")
ALL_CALVES = QT_TRANSLATE_NOOP("Prints", "All calves")
GROUP = QT_TRANSLATE_NOOP("Prints", "Group {number}")
CHART_REPLACES = QT_TRANSLATE_NOOP("Prints", "Take down no. {old}")
OTHER_LOT = QT_TRANSLATE_NOOP("Prints", "Another lot number on the bag? Stop. Weigh in again.")
CALVES = QT_TRANSLATE_NOOP("Prints", "Calves")
BATCHES = QT_TRANSLATE_NOOP("Prints", "Batches")
A_FEEDING = QT_TRANSLATE_NOOP("Prints", "a feeding")
WATER = QT_TRANSLATE_NOOP("Prints", "Water")
WATER_EACH = QT_TRANSLATE_NOOP("Prints", "Water each")
TEMPERATURE = QT_TRANSLATE_NOOP("Prints", "Water at")
POWDER = QT_TRANSLATE_NOOP("Prints", "Powder")
POWDER_EACH = QT_TRANSLATE_NOOP("Prints", "Powder each")
SCOOPFULS = QT_TRANSLATE_NOOP("Prints", "or scoopfuls")
SCOOPFULS_EACH = QT_TRANSLATE_NOOP("Prints", "or scoopfuls each")
FRAMED = QT_TRANSLATE_NOOP("Prints", "Printed {date}; framed: that day's calves")
LEVEL = QT_TRANSLATE_NOOP("Prints", "level")
TO_THE_LINE = QT_TRANSLATE_NOOP("Prints", "to the line")
TO_NAMED_LINE = QT_TRANSLATE_NOOP("Prints", "to the {mass} line")
TAPPED = QT_TRANSLATE_NOOP("Prints", "tapped")
WEIGH_POWDER = QT_TRANSLATE_NOOP("Prints", "weigh it")
BETTER_WEIGH = QT_TRANSLATE_NOOP("Prints", "better weighed")
WEIGH_PORTIONS = QT_TRANSLATE_NOOP("Prints", "weigh {times}")
BETTER_PORTIONS = QT_TRANSLATE_NOOP("Prints", "better weigh {times}")
SCALE_MOST = QT_TRANSLATE_NOOP("Prints", "The scale weighs {capacity} at most, pail included.")
LIGHT_ADDITIVES = QT_TRANSLATE_NOOP(
    "Prints",
    "Additives lighter than {least}: the scale's step is too coarse for them. Use a finer scale, or the product's own "
    "spoon.",
)
SCALE_HIGH = QT_TRANSLATE_NOOP(
    "Prints", "The scale showed {share} too much at the weigh-in: set it right before powder is weighed by it."
)
SCALE_LOW = QT_TRANSLATE_NOOP(
    "Prints", "The scale showed {share} too little at the weigh-in: set it right before powder is weighed by it."
)
MANY_SCOOPFULS = QT_TRANSLATE_NOOP("Prints", "Over {most} scoopfuls are easily miscounted: weigh the powder.")
NO_COUNT_NEAR = QT_TRANSLATE_NOOP("Prints", "A row without scoopfuls: no count comes near enough, weigh it.")
GOES_BY_WATER = QT_TRANSLATE_NOOP(
    "Prints", "Volumes are rounded to {step}; in small batches the powder goes with them, so the strength holds."
)
HALF_TO_LINE = QT_TRANSLATE_NOOP(
    "Prints", "1/2 to the line: fill to the ½ line on the label; where it has none, by eye or by weight."
)
PART_BY_EYE = QT_TRANSLATE_NOOP("Prints", "A part of a scoopful without a line is filled by eye; weighing is surer.")
COLD_WEATHER = QT_TRANSLATE_NOOP("Prints", "For cold weather, below {limit}")
TWO_LOTS = QT_TRANSLATE_NOOP("Prints", "ONE BATCH FROM TWO LOTS")
WHOLE_SCOOPFULS = QT_TRANSLATE_NOOP("Prints", "in batches: the nearest whole scoopful")
LAST_OF_LOT = QT_TRANSLATE_NOOP("Prints", "THE LAST OF LOT {lot}")
TWO_LOTS_CALVES = QT_TRANSLATE_NOOP("Prints", "{calves} calves")
TWO_LOTS_ONE_OF = QT_TRANSLATE_NOOP("Prints", "one of {batches} batches for {calves} calves")
TWO_LOTS_PART = QT_TRANSLATE_NOOP("Prints", "from bags of lot {lot}, by its own line: {powder}, {how}")
TWO_LOTS_NO_LINE = QT_TRANSLATE_NOOP("Prints", "from bags of lot {lot}: {powder}, {how}")
WEEKS = QT_TRANSLATE_NOOP("Prints", "Steps to weaning, each calf")
WEEKS_NO_COLD = QT_TRANSLATE_NOOP("Prints", "without what is added for cold weather")
WEEKS_DAYS = QT_TRANSLATE_NOOP("Prints", "Days")
WEEKS_FROM = QT_TRANSLATE_NOOP("Prints", "From")
WEEKS_FEEDINGS = QT_TRANSLATE_NOOP("Prints", "Feedings")
WEEKS_MIX = QT_TRANSLATE_NOOP("Prints", "Mix a feeding")
WEEKS_POWDER = QT_TRANSLATE_NOOP("Prints", "Powder a feeding")
WEEKS_DAY = QT_TRANSLATE_NOOP("Prints", "Powder a day")
WEEKS_WEANED = QT_TRANSLATE_NOOP("Prints", "weaned")
WATER_UP = QT_TRANSLATE_NOOP("Prints", "water {length} deep")
MIX_UP = QT_TRANSLATE_NOOP("Prints", "mix {length} deep")
MAKES = QT_TRANSLATE_NOOP("Prints", "makes {volume}")
FILL_UP_TO = QT_TRANSLATE_NOOP("Prints", "mix to {volume}")
RUNS_OVER = QT_TRANSLATE_NOOP("Prints", "too much for {vessel}")
THE_VESSEL = QT_TRANSLATE_NOOP("Prints", "the vessel")
PER_CALF_MIX = QT_TRANSLATE_NOOP("Prints", "{volume} of mix per calf")
PER_CALF_WATER = QT_TRANSLATE_NOOP("Prints", "{volume} of water per calf")
PER_CALF_POWDER = QT_TRANSLATE_NOOP("Prints", "{powder} of powder per calf")
FEED_EACH = QT_TRANSLATE_NOOP("Prints", "each feeding: {volume} of mix a calf")
RATE_ON_WATER = QT_TRANSLATE_NOOP("Prints", "{powder} of powder on top of every {volume} of water")
RATE_MADE_UP = QT_TRANSLATE_NOOP("Prints", "{powder} of powder made up with water to {volume}")
RATE_PER_FINISHED = QT_TRANSLATE_NOOP("Prints", "{powder} of powder in every {volume} of mix as fed")
RATE_SOLIDS = QT_TRANSLATE_NOOP("Prints", "{solids} solids (powder by weight)")
ALL_GROUPS = QT_TRANSLATE_NOOP("Prints", "One recipe for all groups: {mix}")
RATE_DRY_MATTER = QT_TRANSLATE_NOOP("Prints", "{solids} dry matter (by weight)")
VESSEL = QT_TRANSLATE_NOOP("Prints", "mixed in {vessel}")

# Cautions
SCALD = QT_TRANSLATE_NOOP("Prints", "Water of {limit} or hotter scalds: keep people and calves away.")
FOLLOW_LABEL = QT_TRANSLATE_NOOP("Prints", "The product's label comes before this sheet.")
MEDICATED = QT_TRANSLATE_NOOP(
    "Prints", "MEDICATED powder: feed only as its label and your veterinarian say. Mind the withdrawal time."
)
ASK_VET = QT_TRANSLATE_NOOP("Prints", "Sick or weak calf? Ask the veterinarian.")
NO_TUBE = QT_TRANSLATE_NOOP("Prints", "No milk or replacer by tube unless the veterinarian says so.")
FRESH_WATER = QT_TRANSLATE_NOOP("Prints", "Calves need fresh water too.")
FEED_AT_ONCE = QT_TRANSLATE_NOOP("Prints", "Feed at once and keep the mix moving.")
DUST = QT_TRANSLATE_NOOP("Prints", "Do not breathe the dust; no flames near it.")

# Lot sheet
LOT_SHEET = QT_TRANSLATE_NOOP("Prints", "Lot sheet")
SHEET_REPLACES = QT_TRANSLATE_NOOP("Prints", "Print no. {number} (replaces no. {old})")
THE_LOT = QT_TRANSLATE_NOOP("Prints", "Lot")
PRODUCT = QT_TRANSLATE_NOOP("Prints", "Product")
MADE_ON = QT_TRANSLATE_NOOP("Prints", "Made on")
ARRIVED_ON = QT_TRANSLATE_NOOP("Prints", "Arrived on")
PACKAGES = QT_TRANSLATE_NOOP("Prints", "Packages")
BAGS_OF = QT_TRANSLATE_NOOP("Prints", "{count} bags, {mass} each")
TOTES_OF = QT_TRANSLATE_NOOP("Prints", "{count} totes, {mass} each")
BAGS_UNWEIGHED = QT_TRANSLATE_NOOP("Prints", "{count} bags")
TOTES_UNWEIGHED = QT_TRANSLATE_NOOP("Prints", "{count} totes")
ANALYSIS = QT_TRANSLATE_NOOP("Prints", "Label analysis")
PROTEIN = QT_TRANSLATE_NOOP("Prints", "protein {percent}")
FAT = QT_TRANSLATE_NOOP("Prints", "fat {percent}")
FIBRE = QT_TRANSLATE_NOOP("Prints", "fiber {percent}")
ASH = QT_TRANSLATE_NOOP("Prints", "ash {percent}")
MOISTURE = QT_TRANSLATE_NOOP("Prints", "moisture {percent}")
MEDICATED_SHORT = QT_TRANSLATE_NOOP("Prints", "Medicated")
YES = QT_TRANSLATE_NOOP("Prints", "yes")
NO = QT_TRANSLATE_NOOP("Prints", "no")
NOTE = QT_TRANSLATE_NOOP("Prints", "Note")
ADDED_SINCE = QT_TRANSLATE_NOOP("Prints", "{value} (entered after the sign-off)")
CHANGED_SINCE = QT_TRANSLATE_NOOP("Prints", "{value}; corrected after the sign-off: {new}")
SCOOP_AND_SCALE = QT_TRANSLATE_NOOP("Prints", "Scoop and scale")
SCOOP = QT_TRANSLATE_NOOP("Prints", "Scoop")
INSIDE = QT_TRANSLATE_NOOP("Prints", "Inside measures")
CYLINDER = QT_TRANSLATE_NOOP("Prints", "round, {diameter} across, {height} high")
TAPERED = QT_TRANSLATE_NOOP("Prints", "tapered, rim {rim}, floor {floor}, {height} high")
BOX = QT_TRANSLATE_NOOP("Prints", "box, {length} × {width}, {height} high")
POURED = QT_TRANSLATE_NOOP("Prints", "water poured in {count} steps, {height} high")
STRUCK_VOLUME = QT_TRANSLATE_NOOP("Prints", "Struck-level volume")
FROM_WATER = QT_TRANSLATE_NOOP("Prints", "from weighed water")
FROM_DIMENSIONS = QT_TRANSLATE_NOOP("Prints", "from its dimensions")
SCALE = QT_TRANSLATE_NOOP("Prints", "Scale")
RESOLUTION = QT_TRANSLATE_NOOP("Prints", "Display step")
CAPACITY = QT_TRANSLATE_NOOP("Prints", "Capacity")
ZEROED = QT_TRANSLATE_NOOP("Prints", "Level and zeroed")
CHECK_WEIGHT = QT_TRANSLATE_NOOP("Prints", "Check weight")
CHECK_READ = QT_TRANSLATE_NOOP("Prints", "{nominal} showed {reading}, error {error} g")
CHECK_NONE = QT_TRANSLATE_NOOP("Prints", "none used: the scale is taken for a sound one")
CHECK_NONE_LEFT_OUT = QT_TRANSLATE_NOOP("Prints", "none used: an error of the scale is not in the intervals")
HOW_WEIGHED = QT_TRANSLATE_NOOP("Prints", "How it was weighed")
STARTED = QT_TRANSLATE_NOOP("Prints", "Started")
WEIGHED_BY = QT_TRANSLATE_NOOP("Prints", "Weighed by")
ROOM = QT_TRANSLATE_NOOP("Prints", "Room")
HUMIDITY = QT_TRANSLATE_NOOP("Prints", "{percent} humidity")
TARGET = QT_TRANSLATE_NOOP("Prints", "Target weight")
TOLERANCE = QT_TRANSLATE_NOOP("Prints", "Tolerance")
METHOD = QT_TRANSLATE_NOOP(
    "Prints",
    "Powder stirred up, scoop dipped and heaped, struck off with a straight edge without tapping; the scale "
    "zeroed before each weighing. Fills to the line were evened by a shake and read at eye level. Weights "
    "are as the scale showed them, in air.",
)
FILLS = QT_TRANSLATE_NOOP("Prints", "Fills, all of them")
SPOT_FILLS = QT_TRANSLATE_NOOP("Prints", "Spot fills from bags opened later")
COLUMN_NUMBER = QT_TRANSLATE_NOOP("Prints", "No.")
COLUMN_BAG = QT_TRANSLATE_NOOP("Prints", "Bag")
COLUMN_WAY = QT_TRANSLATE_NOOP("Prints", "Filled")
COLUMN_SCOOPFULS = QT_TRANSLATE_NOOP("Prints", "Scoops")
COLUMN_TYPED = QT_TRANSLATE_NOOP("Prints", "As read")
COLUMN_GRAMS = QT_TRANSLATE_NOOP("Prints", "g")
COLUMN_LINE = QT_TRANSLATE_NOOP("Prints", "Line at")
COLUMN_WHO = QT_TRANSLATE_NOOP("Prints", "Who")
COLUMN_WHEN = QT_TRANSLATE_NOOP("Prints", "When")
STRUCK_OUT = QT_TRANSLATE_NOOP("Prints", "struck out: {reason}")
RESULTS = QT_TRANSLATE_NOOP("Prints", "Results")
LEVEL_SCOOPFUL = QT_TRANSLATE_NOOP("Prints", "Level scoopful")
INTERVAL_95 = QT_TRANSLATE_NOOP("Prints", "95 % interval")
FROM_TO = QT_TRANSLATE_NOOP("Prints", "{low} to {high}")
BULK_DENSITY = QT_TRANSLATE_NOOP("Prints", "Bulk density, level")
SETTLING = QT_TRANSLATE_NOOP("Prints", "Settling factor")
SPREADS = QT_TRANSLATE_NOOP("Prints", "Spread")
SPREAD_OF = QT_TRANSLATE_NOOP("Prints", "between bags {bags}, between fills {fills}")
COUNTED = QT_TRANSLATE_NOOP("Prints", "Counted")
COUNTED_OF = QT_TRANSLATE_NOOP("Prints", "mean of {bags} bags, {fills} fills")
ONE_MORE = QT_TRANSLATE_NOOP("Prints", "One more scoopful")
FREEDOM = QT_TRANSLATE_NOOP("Prints", "Degrees of freedom")
RULE = QT_TRANSLATE_NOOP("Prints", "Interval from")
RULE_BAG_MEANS = QT_TRANSLATE_NOOP("Prints", "the means of this lot's bags")
RULE_HISTORY = QT_TRANSLATE_NOOP("Prints", "this lot and the farm's earlier lots")
RULE_EVERY_BAG = QT_TRANSLATE_NOOP("Prints", "the fills of this lot, of which every bag was dipped")
RULE_CAUTIOUS = QT_TRANSLATE_NOOP("Prints", "a cautious guess of the spread, for want of fills")
BUDGET = QT_TRANSLATE_NOOP("Prints", "Uncertainty budget of the level scoopful")
DENSITY_BUDGET = QT_TRANSLATE_NOOP("Prints", "Uncertainty budget of the bulk density")
COLUMN_SOURCE = QT_TRANSLATE_NOOP("Prints", "Source")
COLUMN_SHAPE = QT_TRANSLATE_NOOP("Prints", "Distribution")
COLUMN_U = QT_TRANSLATE_NOOP("Prints", "u")
COLUMN_SENSITIVITY = QT_TRANSLATE_NOOP("Prints", "Sensitivity")
COLUMN_CONTRIBUTION = QT_TRANSLATE_NOOP("Prints", "Contribution")
COLUMN_SHARE = QT_TRANSLATE_NOOP("Prints", "Share")
COLUMN_FREEDOM = QT_TRANSLATE_NOOP("Prints", "d.f.")
NORMAL = QT_TRANSLATE_NOOP("Prints", "normal")
RECTANGULAR = QT_TRANSLATE_NOOP("Prints", "rectangular")
ASSUMED = QT_TRANSLATE_NOOP("Prints", "assumed")
CONTAINED = QT_TRANSLATE_NOOP("Prints", "in another row")
SOURCE_BAG_MEANS = QT_TRANSLATE_NOOP("Prints", "bags and fills together")
SOURCE_BAGS = QT_TRANSLATE_NOOP("Prints", "between bags")
SOURCE_FILLS = QT_TRANSLATE_NOOP("Prints", "between fills of a bag")
SOURCE_READING = QT_TRANSLATE_NOOP("Prints", "display step, full")
SOURCE_TARE = QT_TRANSLATE_NOOP("Prints", "display step, empty")
SOURCE_SCALE_ERROR = QT_TRANSLATE_NOOP("Prints", "error of the scale")
SOURCE_LEVEL_MEAN = QT_TRANSLATE_NOOP("Prints", "weight of the level scoopful")
SOURCE_SCOOP_VOLUME = QT_TRANSLATE_NOOP("Prints", "volume of the scoop")
SOURCE_SETTLING = QT_TRANSLATE_NOOP("Prints", "settling factor")
LINES = QT_TRANSLATE_NOOP("Prints", "Lines as signed off")
COLUMN_TARGET = QT_TRANSLATE_NOOP("Prints", "Target")
COLUMN_FULL = QT_TRANSLATE_NOOP("Prints", "Level scoops before")
COLUMN_DOWN = QT_TRANSLATE_NOOP("Prints", "Below the rim")
COLUMN_HEIGHT = QT_TRANSLATE_NOOP("Prints", "Above the floor")
COLUMN_WEIGHS = QT_TRANSLATE_NOOP("Prints", "To the line")
VERDICTS = QT_TRANSLATE_NOOP("Prints", "Verdicts")
NEW_LINE = QT_TRANSLATE_NOOP("Prints", "New line")
OLD_LINE = QT_TRANSLATE_NOOP("Prints", "Old line")
ON_TARGET = QT_TRANSLATE_NOOP("Prints", "on target")
MOVE = QT_TRANSLATE_NOOP("Prints", "move it")
WEIGH_MORE = QT_TRANSLATE_NOOP("Prints", "weigh more before judging")
AS_NEAR_AS_RULED = QT_TRANSLATE_NOOP("Prints", "as near as the ruler allows, outside the tolerance")
SIGNED_ALTHOUGH = QT_TRANSLATE_NOOP("Prints", "signed off although the fills said: {verdict}")
KEEP = QT_TRANSLATE_NOOP("Prints", "keep it")
NOT_CHECKED = QT_TRANSLATE_NOOP("Prints", "not checked")
OLD_LINE_AT = QT_TRANSLATE_NOOP("Prints", "{verdict} (found {length} below the rim)")
DECISION = QT_TRANSLATE_NOOP(
    "Prints",
    "Rule of decision: a line is on target when the whole {judged} interval of what it delivers lies within the "
    "tolerance (two one-sided tests at {tail}); it is to be moved when the interval leaves out the target and another "
    "division of the ruler is nearer. An old line is judged anew after each level fill, therefore by a {old} interval: "
    "kept when that lies within the tolerance, moved when it lies outside.",
)
COVERAGE = QT_TRANSLATE_NOOP(
    "Prints",
    "± is the half-width of a 95 % interval, as on the screens: each doubt is widened by Student's factor for its own "
    "degrees of freedom, then added as squares. For the scoop's volume and for settling the factor is 2 (JCGM "
    "100:2008). In the budgets u is one standard uncertainty.",
)
VALIDITY = QT_TRANSLATE_NOOP(
    "Prints",
    "These results hold for this lot, this scoop and this way of filling only. The record is laid out after "
    "ISO/IEC 17025:2017, 7.8, as far as it applies to a farm; it is no certificate of an accredited "
    "laboratory, and weights are traceable only as far as the check weight is.",
)
SIGNED = QT_TRANSLATE_NOOP("Prints", "Signed off {date} by {who}")
VERSIONS = QT_TRANSLATE_NOOP(
    "Prints", "calibrator {version} · scoop {scoop} · scale {scale} · lot {lot} · weigh-in {weigh_in}"
)
WHAT_IT_MEANS = QT_TRANSLATE_NOOP("Prints", "What these figures mean")
SIGNATURE = QT_TRANSLATE_NOOP("Prints", "Signature")

# Season report
SEASON_REPORT = QT_TRANSLATE_NOOP("Prints", "Season report")
LOTS_FROM_TO = QT_TRANSLATE_NOOP("Prints", "Sign-offs: {count}, {first} to {last}")
LOTS_OF_A_DAY = QT_TRANSLATE_NOOP("Prints", "Sign-offs: {count}, {first}")
DENSITY_BY_LOT = QT_TRANSLATE_NOOP("Prints", "Bulk density by lot, struck level")
DENSITY_AXIS = QT_TRANSLATE_NOOP("Prints", "{unit}, at the day of the weigh-in")
DOTS_READ = QT_TRANSLATE_NOOP("Prints", "Dot: a lot, its bar a 95 % interval.")
LIMITS_READ = QT_TRANSLATE_NOOP(
    "Prints",
    "Gray steps: the limits within which lots of its kind of powder are expected, wider where a lot is known less "
    "well. Line: the running mean.",
)
RING_MARKS = QT_TRANSLATE_NOOP("Prints", "A ring marks a lot that stands out.")
WHAT_HAPPENED = QT_TRANSLATE_NOOP("Prints", "What happened")
FEW_LOTS = QT_TRANSLATE_NOOP("Prints", "So few lots do not tell yet what is ordinary here.")
LAST_CHANGE_MORE = QT_TRANSLATE_NOOP("Prints", "By the scoop, lot {lot} weighs {share} more than lot {before}.")
LAST_CHANGE_NONE = QT_TRANSLATE_NOOP("Prints", "By the scoop, lot {lot} weighs as much as lot {before}.")
LAST_CHANGE_LESS = QT_TRANSLATE_NOOP("Prints", "By the scoop, lot {lot} weighs {share} less than lot {before}.")
SCALE_TAKEN_OFF = QT_TRANSLATE_NOOP("Prints", "Lot {lot}: {mass} a level scoopful taken off for the scale.")
SCALE_ADDED = QT_TRANSLATE_NOOP("Prints", "Lot {lot}: {mass} a level scoopful added for the scale.")
NOTHING_HAPPENED = QT_TRANSLATE_NOOP("Prints", "Nothing out of the ordinary was found in these lots.")
OLDER_FINDINGS = QT_TRANSLATE_NOOP("Prints", "{count} earlier findings are on the page of the season.")
NEW_POWDER = QT_TRANSLATE_NOOP("Prints", "{date}, lot {lot}: powder of another kind, {product}. {step}")
NEW_POWDER_AGGLOMERATED = QT_TRANSLATE_NOOP(
    "Prints",
    "{date}, lot {lot}: agglomerated powder came for the first time. {step}",
)
NEW_SCOOP = QT_TRANSLATE_NOOP("Prints", "{date}, lot {lot}: scoop {new} took the place of {old}. {step}")
HUMID_SPELL = QT_TRANSLATE_NOOP(
    "Prints",
    "{date}, lot {lot}: weighed in humid air, {humidity} where {usual} is usual. {step}",
)
OUT_OF_LINE = QT_TRANSLATE_NOOP("Prints", "{date}, lot {lot}: {share} from the middle of its kind: {rules}.")
STEP_UP = QT_TRANSLATE_NOOP("Prints", "Density is {share} higher with it ({low} to {high}).")
STEP_DOWN = QT_TRANSLATE_NOOP("Prints", "Density is {share} lower with it ({low} to {high}).")
STEP_NOT_SEEN = QT_TRANSLATE_NOOP("Prints", "Whether the density changed with it cannot be told from these lots.")
RULE_BEYOND = QT_TRANSLATE_NOOP("Prints", "outside its limits")
RULE_STEP = QT_TRANSLATE_NOOP("Prints", "far from the lot before")
RULE_RUN = QT_TRANSLATE_NOOP("Prints", "eight in a row on one side")
RULE_DRIFT = QT_TRANSLATE_NOOP("Prints", "a slow drift")
WHERE_SPREAD = QT_TRANSLATE_NOOP("Prints", "Where the spread comes from")
BETWEEN_LOTS = QT_TRANSLATE_NOOP("Prints", "lots")
BETWEEN_BAGS = QT_TRANSLATE_NOOP("Prints", "bags of a lot")
BETWEEN_FILLS = QT_TRANSLATE_NOOP("Prints", "fills of a bag")
CANNOT_TELL = QT_TRANSLATE_NOOP("Prints", "too few to tell")
SPREAD_READ = QT_TRANSLATE_NOOP("Prints", "Standard deviations in percent of a scoopful, with 95 % intervals.")
SPREAD_FEW_LOTS = QT_TRANSLATE_NOOP("Prints", "How lots differ cannot be told from so few lots.")
SPREAD_TOO_FEW = QT_TRANSLATE_NOOP("Prints", "There are too few fills to tell.")
WHAT_TO_DO = QT_TRANSLATE_NOOP("Prints", "What to do")
DO_MORE_BAGS = QT_TRANSLATE_NOOP(
    "Prints",
    "Dip more bags, with fewer fills from each: the bags differ more than the fills of a bag.",
)
DO_MORE_FILLS = QT_TRANSLATE_NOOP(
    "Prints",
    "Take more fills from each bag: the fills of a bag differ more than the bags.",
)
DO_AS_NOW = QT_TRANSLATE_NOOP("Prints", "Go on weighing as many bags and fills as now.")
DO_AS_WEIGH_IN = QT_TRANSLATE_NOOP(
    "Prints",
    "Weigh as many bags and fills as each weigh-in asks for. After about five lots of one powder this report can tell "
    "how few are enough.",
)
DO_PRACTISE = QT_TRANSLATE_NOOP("Prints", "Practice the scooping: fills of one bag scatter more than they need to.")
DO_PRACTISE_WITH = QT_TRANSLATE_NOOP(
    "Prints",
    "Practice the scooping with {who}: these fills scatter more than the others'.",
)
DO_CHECK_SCALE = QT_TRANSLATE_NOOP(
    "Prints",
    "The scale's step is coarse for one scoopful: weigh several together, or use a finer scale.",
)
DO_NEW_KIND = QT_TRANSLATE_NOOP(
    "Prints",
    "Weigh in every new lot before it is fed: an old line does not hold for another powder.",
)
DO_BEST = QT_TRANSLATE_NOOP(
    "Prints",
    "Least work for the tolerance of {tolerance}: bags: {bags}, fills from each: {fills}. So far a weigh-in had bags: "
    "{usual_bags}, fills from each: {usual_fills}.",
)
WHAT_WAS_FED = QT_TRANSLATE_NOOP("Prints", "Bags counted, spot fills and mixes checked")
CHECKS_TOLD = QT_TRANSLATE_NOOP(
    "Prints",
    "Batches checked: {count}. As they were mixed: as it should be: {inside}, looks right: {likely}, probably too thin "
    "or too strong: {leaning}, too thin or too strong: {outside}.",
)
CHECKS_AGAIN = QT_TRANSLATE_NOOP(
    "Prints", "Put right and read again: {count}, of which right or likely right then: {right}."
)
CHECKS_MEAN = QT_TRANSLATE_NOOP("Prints", "As mixed, on average {off} off target.")
CHECKS_READ = QT_TRANSLATE_NOOP(
    "Prints", "A check tells of its batch; what the calves get over days only bags counted tell."
)
CHECKS_NONE = QT_TRANSLATE_NOOP("Prints", "No check of the mix was kept.")
COLUMN_ARRIVED = QT_TRANSLATE_NOOP("Prints", "Arrived")
COLUMN_WEIGHED = QT_TRANSLATE_NOOP("Prints", "Weighed in")
COLUMN_OFF = QT_TRANSLATE_NOOP("Prints", "From the average")
COLUMN_RULES = QT_TRANSLATE_NOOP("Prints", "What stands out")
ALL_LOTS = QT_TRANSLATE_NOOP("Prints", "Lots, newest first")
OLDER_LOTS = QT_TRANSLATE_NOOP("Prints", "{count} older ones are in the tables that the program saves.")
REPORT_CAUTION = QT_TRANSLATE_NOOP(
    "Prints",
    "Densities are weighed, never corrected by humidity. Feed by the product's label; the veterinarian decides "
    "for sick calves.",
)
WHAT_FEEDING = QT_TRANSLATE_NOOP("Prints", "What a feeding would weigh, the scoop filled as for the lot before")
COLUMN_LINE_OF = QT_TRANSLATE_NOOP("Prints", "Filled as for")
FILLED_LEVEL = QT_TRANSLATE_NOOP("Prints", "{lot}, level")
COLUMN_FEEDING = QT_TRANSLATE_NOOP("Prints", "A feeding would be")
COLUMN_OFF_TARGET = QT_TRANSLATE_NOOP("Prints", "Off target")
COLUMN_SOLIDS = QT_TRANSLATE_NOOP("Prints", "Solids")
COLUMN_MONEY = QT_TRANSLATE_NOOP("Prints", "Powder a day, {currency}")
BAGS_COUNTED = QT_TRANSLATE_NOOP("Prints", "By the bags counted, a feeding got on average (from the target): {lots}.")
BAGS_OF_LOT = QT_TRANSLATE_NOOP("Prints", "{lot}: {mass} ({share}, over {count} feedings)")
LINE_MOVED = QT_TRANSLATE_NOOP("Prints", "The line moved from {old} to {new} below the rim.")
LINE_SAME = QT_TRANSLATE_NOOP("Prints", "The line stayed at {new} below the rim.")
LINE_GONE = QT_TRANSLATE_NOOP("Prints", "The line was {old} below the rim; now the scoop is used level.")
LINE_FIRST = QT_TRANSLATE_NOOP("Prints", "The scoop was used level; now its line is {new} below the rim.")
LINE_NONE = QT_TRANSLATE_NOOP("Prints", "The scoop went on being used level.")
WEIGHED_ANEW = QT_TRANSLATE_NOOP("Prints", "Lot {lot} was weighed in anew on {date}.")
SPOTS_ONLY = QT_TRANSLATE_NOOP("Prints", "Spot fills from bags opened later: {count}.")
SPOTS_TOLD = QT_TRANSLATE_NOOP(
    "Prints",
    "Spot fills from bags opened later: {count}. By weigh-in and spot fills together, a feeding weighs (from the "
    "target): {lots}.",
)
SPOTS_OF_LOT = QT_TRANSLATE_NOOP("Prints", "{lot}: {mass} ({share}, spot fills: {fills}), {verdict}")
MARK_HOLDS = QT_TRANSLATE_NOOP("Prints", "the mark holds")
MARK_MOVES = QT_TRANSLATE_NOOP("Prints", "the mark no longer holds: weigh the lot in anew")
MARK_UNSURE = QT_TRANSLATE_NOOP("Prints", "not yet sure whether the mark holds")
LOT_FED = QT_TRANSLATE_NOOP("Prints", "In use: lot {lot}")
COLUMN_LINE_DOWN = QT_TRANSLATE_NOOP("Prints", "Line below the rim")
NOTHING_CARRIED = QT_TRANSLATE_NOOP("Prints", "It takes two lots signed off with one scoop.")
MONEY_READ = QT_TRANSLATE_NOOP(
    "Prints",
    "Worked out as if the scoop were still filled so; where its line was moved, that did not happen. More than 0: "
    "powder beyond the target, to be paid for; less than 0: powder that the calves would not have got.",
)
NO_PLAN = QT_TRANSLATE_NOOP("Prints", "Solids and powder a day are not told: no feeding plan is entered.")
NO_PRICE = QT_TRANSLATE_NOOP("Prints", "Powder a day is not told where the price of the lot is not entered.")
NO_PACKAGE = QT_TRANSLATE_NOOP("Prints", "Powder a day is not told where the weight of the lot's bags is not entered.")

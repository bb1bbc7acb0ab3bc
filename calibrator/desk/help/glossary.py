"""What the words mean, in the order in which a person meets them."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

translate = QCoreApplication.translate


def glossary() -> tuple[tuple[str, str], ...]:
    """Word and meaning."""
    return (*_powder(), *_weighing(), *_mix())


def _powder() -> tuple[tuple[str, str], ...]:
    return (
        (
            translate("Glossary", "Lot"),
            translate(
                "Glossary", "Bags that were made together; the number stands on the bag. Each lot has its own density."
            ),
        ),
        (
            translate("Glossary", "Bulk density"),
            translate(
                "Glossary", "Weight of loose powder by volume. Where it changes, the same scoop holds another weight."
            ),
        ),
        (
            translate("Glossary", "Agglomerated"),
            translate(
                "Glossary", "Made into larger, airy grains so that it wets fast. Such powder is lighter by the scoop."
            ),
        ),
        (
            translate("Glossary", "Settling"),
            translate(
                "Glossary", "How much denser or looser powder lies, shaken even at the line, than struck at the rim."
            ),
        ),
    )


def _weighing() -> tuple[tuple[str, str], ...]:
    return (
        (
            translate("Glossary", "Scoop"),
            translate("Glossary", "The cup, can or dipper that the powder is measured with."),
        ),
        (
            translate("Glossary", "Weigh-in"),
            translate(
                "Glossary", "Weighing scoopfuls of a new lot from several bags, drawing the line, and checking it."
            ),
        ),
        (
            translate("Glossary", "Level fill"),
            translate("Glossary", "A scoop heaped, then struck off at the rim with a straight edge, not tapped."),
        ),
        (
            translate("Glossary", "Line, or fill mark"),
            translate("Glossary", "How far to fill the scoop so that it holds the target weight of this lot."),
        ),
        (
            translate("Glossary", "Fill to the line"),
            translate(
                "Glossary",
                "Dipped a little over the line, then one shake from side to side, so that the powder lies even there.",
            ),
        ),
        (
            translate("Glossary", "18 to the line"),
            translate(
                "Glossary", "18 scoopfuls, each filled to the line. 4 × 18 to the line: 4 batches of 18 scoopfuls each."
            ),
        ),
        (
            translate("Glossary", "Target weight"),
            translate(
                "Glossary",
                "The powder that one calf should get at one feeding. The bag's label or your veterinarian tells it.",
            ),
        ),
        (
            translate("Glossary", "Two groups, two weights"),
            translate(
                "Glossary",
                "Where groups get different weights the target is what most calves get, and the line is drawn for it. "
                "The other groups are counted in scoopfuls to the same line (half as much again is 1 1/2 scoopfuls a "
                "calf), or to a line of their own where the label has one. Batch tables and the wall chart count them "
                "for the whole batch.",
            ),
        ),
        (
            translate("Glossary", "Half a scoopful, 1 1/2"),
            translate(
                "Glossary",
                "1 1/2 to the line: one scoopful to the line, then one to the half line, ½, which the label can have "
                "too. It holds half the target weight; half way down the scoop would be something else. The plan says "
                "whether half scoopfuls are allowed.",
            ),
        ),
        (
            translate("Glossary", "Tolerance"),
            translate("Glossary", "How far from the target a feeding may be before it matters. Usual: 2 %."),
        ),
        (
            translate("Glossary", "95 % interval"),
            translate("Glossary", "Where the true figure lies, going by the fills: right 19 times out of 20."),
        ),
        (
            translate("Glossary", "Struck out"),
            translate("Glossary", "A fill that does not count, with the reason. It stays in the records."),
        ),
        (
            translate("Glossary", "Check weight"),
            translate("Glossary", "A weight that you know for sure. It shows how far off the scale is."),
        ),
        (
            translate("Glossary", "Sign-off"),
            translate("Glossary", "The weigh-in is done and frozen: from here labels and tables go by it."),
        ),
        (
            translate("Glossary", "Change-over"),
            translate(
                "Glossary", "The feeding from which the next lot is fed. From there its line and its charts hold."
            ),
        ),
        (
            translate("Glossary", "Spot fill"),
            translate(
                "Glossary", "One scoopful weighed when another bag is opened, to see whether the line still holds."
            ),
        ),
    )


def _mix() -> tuple[tuple[str, str], ...]:
    return (
        (
            translate("Glossary", "Group"),
            translate("Glossary", "Calves that are fed alike: as much of the same mix. Each has its own table."),
        ),
        (
            translate("Glossary", "Several batches, 2 ×"),
            translate("Glossary", "One feeding mixed in two batches, because all of it would run over the vessel."),
        ),
        (
            translate("Glossary", "Batch"),
            translate("Glossary", "What is mixed at once in one vessel, for one or many calves."),
        ),
        (
            translate("Glossary", "Rate"),
            translate(
                "Glossary",
                "How much powder to how much water, or to how much finished mix. They are not the same: ask which.",
            ),
        ),
        (
            translate("Glossary", "Solids"),
            translate("Glossary", "Powder as a share of the mix by weight. Whole milk has about 12.5 %."),
        ),
        (
            translate("Glossary", "Too thin, too strong"),
            translate(
                "Glossary", "Less, or more, powder in the mix than is wanted. The mix check says how to put it right."
            ),
        ),
        (
            translate("Glossary", "Dry matter"),
            translate(
                "Glossary",
                "Solids without the few percent of water that powder itself holds. Laboratories tell this one.",
            ),
        ),
        (
            translate("Glossary", "Osmolality"),
            translate(
                "Glossary",
                "How much is dissolved in the water of the mix; cow's milk has about 300 mOsm/kg. Too much draws water "
                "into the gut and can scour a calf. How much that is, is not agreed on: some advice says 400, other "
                "600. The label and your veterinarian decide.",
            ),
        ),
        (
            translate("Glossary", "Brix"),
            translate("Glossary", "What a refractometer reads: degrees made for sugar water. Milk needs a correction."),
        ),
        (
            translate("Glossary", "Other instruments for the mix check"),
            translate(
                "Glossary",
                "A hydrometer that floats in the mix, or a jug that you fill with mix and weigh, tell the solids too: "
                "enter them under Mix check, Instruments, and the check has their fields. The volume of the finished "
                "mix, and bags counted under Bags, need no instrument.",
            ),
        ),
        (
            translate("Glossary", "Brix calibration"),
            translate(
                "Glossary",
                "A line from two or more mixes that you weighed and read: it turns this refractometer's reading of "
                "this powder into solids.",
            ),
        ),
    )

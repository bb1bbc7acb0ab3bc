"""Phrases with a count in them, so that every language has its own plural.

They stand in a QObject because the gatherer of words sees a count only in `self.tr("… %n …", "", n)`. Written here
is the plural; the singular of English is in its translation file, like those of other languages.
"""

from __future__ import annotations

from PySide6.QtCore import QObject


class _Counted(QObject):
    """Each phrase takes its count."""

    def fills(self, count: int) -> str:
        return self.tr("%n fills", "", count)

    def weighings(self, count: int) -> str:
        return self.tr("%n weighings", "", count)

    def scoopfuls(self, count: int) -> str:
        return self.tr("%n scoopfuls", "", count)

    def to_the_line_before(self, count: int) -> str:
        return self.tr("%n of them to the line before", "", count)

    def to_the_first_try(self, count: int) -> str:
        return self.tr("%n of them to the first try", "", count)

    def trials(self, count: int) -> str:
        return self.tr("%n trials", "", count)

    def kept_here(self, count: int) -> str:
        return self.tr(
            "The server cannot be reached. %n entries since {since} are kept on this computer and will be sent. Go on "
            "weighing; sign-off waits for the server.", "", count
        )  # fmt: skip

    def still_waiting(self, count: int) -> str:
        return self.tr(
            "%n entries since {since} wait on this computer for the server. They stay here and will be sent.", "", count
        )

    def not_taken(self, count: int) -> str:
        return self.tr(
            "The server did not take %n entries. They are kept on this computer: Set-up, Records tells which and why.",
            "", count,
        )  # fmt: skip

    def refused_here(self, count: int) -> str:
        return self.tr(
            "%n entries are on this computer alone and count nowhere. Enter again what is still right.", "", count
        )

    def more_found(self, count: int) -> str:
        return self.tr("And %n more: Set-up, Records, Check now tells each.", "", count)

    def farms_there(self, count: int) -> str:
        return self.tr("The server answers. It holds the records of %n farms.", "", count)

    def bags(self, count: int) -> str:
        return self.tr("%n bags", "", count)

    def calves(self, count: int) -> str:
        return self.tr("%n calves", "", count)

    def charts_out_of_date(self, count: int) -> str:
        return self.tr("The wall charts of {name} (print no. {numbers}) are out of date.", "", count)

    def lot_sheets_out_of_date(self, count: int) -> str:
        return self.tr(
            "The lot sheets of lot {name} (print no. {numbers}) are out of date: the lot was weighed in anew.",
            "",
            count,
        )

    def days(self, count: int) -> str:
        return self.tr("%n days", "", count)

    def feedings(self, count: int) -> str:
        return self.tr("%n feedings", "", count)

    def checks(self, count: int) -> str:
        return self.tr("%n checks", "", count)

    def checks_saved(self, count: int) -> str:
        return self.tr("%n rows saved.", "", count)

    def lots(self, count: int) -> str:
        return self.tr("%n lots", "", count)

    def older_findings(self, count: int) -> str:
        return self.tr("%n older findings are not listed; their lots are marked in the picture.", "", count)

    def lots_left_out(self, count: int) -> str:
        return self.tr("%n lots without that day not shown; it is entered on the page of the lots.", "", count)

    def more_spot_fills(self, count: int) -> str:
        return self.tr(
            "Of the whole lot nothing is sure yet: about %n more spot fills, from other bags, would tell.", "", count
        )

    def minutes(self, count: int) -> str:
        return self.tr("%n minutes", "", count)

    def days_at_hand(self, count: int) -> str:
        return self.tr("Lot {lot}: enough for %n days", "", count)

    def days_beside(self, count: int) -> str:
        return self.tr("And %n days in lot {lot}, weighed in.", "", count)

    def days_beside_unweighed(self, count: int) -> str:
        return self.tr("And %n days in lot {lot}, not weighed in yet.", "", count)

    def next_for(self, count: int) -> str:
        return self.tr("Lot {lot}, enough for %n days more, has to be weighed in by then.", "", count)

    def bags_to_order(self, count: int) -> str:
        return self.tr("The next {days} days take %n bags more than there are.", "", count)

    def totes_to_order(self, count: int) -> str:
        return self.tr("The next {days} days take %n totes more than there are.", "", count)

    def old_bags(self, count: int) -> str:
        return self.tr(
            "By count and plans about %n bags of lot {old} are left. Do they stay, to be fed later?", "", count
        )

    def counted_today(self, count: int) -> str:
        return self.tr("%n bags of lot {number} were counted today. Are they used up?", "", count)

    def still_left(self, count: int) -> str:
        return self.tr("By count and plans about %n bags of lot {number} are left. Are they used up?", "", count)

    def more_bags_at_hand(self, count: int) -> str:
        return self.tr("Besides, about %n bags of lot {lot} are left. To feed them: Lots, Back into use.", "", count)

    def powder_for(self, count: int) -> str:
        return self.tr("Powder of lot {lot} for %n days.", "", count)

    def more_from_other_bags(self, count: int) -> str:
        return self.tr("%n more fills would do, each from a bag not yet dipped.", "", count)

    def more_would_do(self, count: int) -> str:
        return self.tr("%n more fills would do, from any bag.", "", count)

    def from_open_bags(self, count: int) -> str:
        return self.tr("{fills} from the %n open bags", "", count)

    def more_level(self, count: int) -> str:
        return self.tr(
            "Too close to say whether the old line will do: weigh %n more level fills, or draw the new line.", "", count
        )

    def more_to_the_line(self, count: int) -> str:
        return self.tr("Cannot tell yet: weigh %n more fills to the line.", "", count)

    def more_to_the_line_from_other_bags(self, count: int) -> str:
        return self.tr(
            "Cannot tell yet: weigh %n more fills to the line, each from a bag not yet dipped for it.", "", count
        )

    def full_scoops_first(self, count: int) -> str:
        return self.tr("%n level scoopfuls, then one to a line {down} down the wall from the rim.", "", count)

    def equal_to_line(self, count: int) -> str:
        return self.tr("%n equal scoopfuls to one line, {down} down the wall from the rim.", "", count)

    def level_alone(self, count: int) -> str:
        return self.tr("%n level scoopfuls, no line needed: {share} against the target.", "", count)

    def without_the_last(self, count: int) -> str:
        return self.tr(
            "The line would be so near the floor that it cannot be read well. Take %n level scoopfuls and no more: "
            "that is {share} against the target. Or use a smaller scoop.",
            "",
            count,
        )

    def weigh_together(self, count: int) -> str:
        return self.tr(
            "This scale's step is coarse for one scoopful. Weigh %n scoopfuls together each time, and say so "
            "beside the weight.",
            "",
            count,
        )

    def entries(self, count: int) -> str:
        return self.tr("%n entries", "", count)

    def entries_read(self, count: int) -> str:
        return self.tr("%n entries were read out of the damaged file and brought over.", "", count)

    def entries_from_copy(self, count: int) -> str:
        return self.tr("%n more come from the copy of {day}.", "", count)

    def entries_lost(self, count: int) -> str:
        return self.tr("%n entries are lost:", "", count)

    def entries_added(self, count: int) -> str:
        return self.tr("%n entries were brought in.", "", count)

    def entries_there(self, count: int) -> str:
        return self.tr("%n were there already.", "", count)

    def lots_to_add(self, count: int) -> str:
        return self.tr("%n new lots.", "", count)

    def fills_to_add(self, count: int) -> str:
        return self.tr("%n new fills.", "", count)

    def lots_added(self, count: int) -> str:
        return self.tr("%n lots were brought in.", "", count)

    def fills_added(self, count: int) -> str:
        return self.tr("%n fills were brought in.", "", count)

    def lots_there(self, count: int) -> str:
        return self.tr("%n lots are there already and stay as they are.", "", count)

    def fills_there(self, count: int) -> str:
        return self.tr("%n fills are there already.", "", count)

    def cells_to_mend(self, count: int) -> str:
        return self.tr("%n cells have to be corrected in the file first; nothing is brought in before.", "", count)


counted = _Counted()

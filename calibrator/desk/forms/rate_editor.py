"""A mixing rate: its basis, its figures, and the same mix told in the other bases."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import SOLIDS
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import column, row, set_style_property
from calibrator.desk.rate_words import (
    BY_SHARE,
    UNIT_VOLUME_ML,
    basis_name,
    osmolality_text,
    rate_example,
    rate_text,
)
from calibrator.desk.refusals import in_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.saying import Held
from calibrator.model import MixingRate, RateBasis, UnitSystem
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import Powder, mix_on_water, powder_per_water, rate_in
from calibrator.units import Kind

SOLIDS_PCT = (0.1, 60.0)
PERCENT = 100.0


class RateEditor(QWidget):
    """Asks for a rate in any of the five bases. Changing the basis tells the same mix in the new one.

    A new one follows the feeding that it is for until a hand is on it: two volumes on a page that look alike, one of
    them left as it was, are twice the powder.
    """

    edited = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._powder: Powder | None = None
        self._water_c = 43.0
        self._shown = RateBasis.ON_WATER
        self._follows = self._powder_stays = self._waits = self._additives = False
        self.basis = CalmBox()
        for basis in RateBasis:
            self.basis.addItem(basis_name(basis), basis)
        self.basis.activated.connect(self._change_basis)
        self._basis = Captioned(self.tr("How strong: the recipe says"), self.basis)
        self.mass = Amount(desk, self.tr("Powder"), Kind.MASS)
        self.volume = Amount(desk, self.tr("On this much water"), Kind.VOLUME)
        self.share = Amount(desk, self.tr("Share of the mix"), Kind.PERCENT, within=SOLIDS_PCT, examples=SOLIDS)
        self.outcome, self.advice, self._same = Held("heading", lines=3), Held(lines=5), Held("quiet")
        self._example = Held("quiet", lines=1)
        self.mass.edited.connect(self._own_powder)
        for field in (self.volume, self.share):
            field.edited.connect(self._own_rate)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(SPACE)
        fields = row(self._basis, self.mass, self.volume, self.share, spacing=2 * SPACE)
        for place, stretch in enumerate((4, 3, 3, 6)):
            fields.setStretch(place, stretch)
        layout.addLayout(fields)
        layout.addWidget(self._example)
        comes_to = row(column(self.outcome, self.advice, None, spacing=SPACE // 2), self._same, spacing=3 * SPACE)
        comes_to.setStretch(0, 1)
        comes_to.setStretch(1, 1)
        layout.addLayout(comes_to)

    def load(self, rate: MixingRate) -> None:
        """Show a rate that somebody laid down."""
        self._follows = False
        self._basis.say("")
        self.basis.setCurrentIndex(self.basis.findData(rate.basis))
        self._shown = rate.basis
        if rate.basis in BY_SHARE:
            self.share.set_share(rate.solids_share)
        else:
            self.mass.set_value(rate.powder_mass_g)
            self.volume.set_value(rate.volume_ml)
        self._show_fields()
        self._tell_same()

    def begin(self, rate: MixingRate, typed: str, *, powder_stays: bool, waits: bool = False) -> None:
        """Show usual figures that follow the feeding; the powder keeps its weight, or goes with the volume. One that
        `waits` for a choice gives no examples before it: they would look like answers to it."""
        self.load(rate)
        self.mass.set_value(rate.powder_mass_g, typed)
        self._follows, self._powder_stays, self._waits = True, powder_stays, waits
        self._tell_same()

    def follow(self, volume_ml: float, told: str, basis: RateBasis | None) -> None:
        """Take over what a feeding's volume became, and whether that is water or mix; None while that is open."""
        if not self._follows:
            return
        self._waits = basis is None
        if basis is not None and basis is not self._shown:
            self.basis.setCurrentIndex(self.basis.findData(basis))
            self._shown = basis
            self._show_fields()
            self._basis.say(self.tr("Changed by the choice above."))
        mass, was = self.mass.value(), self.volume.value()
        if not self._powder_stays and mass and was:
            self.mass.set_value(mass * volume_ml / was)
        self.volume.set_value(volume_ml, told)
        self._tell_same()

    def would_be(self, basis: RateBasis) -> MixingRate | None:
        """The rate as it stands once the feeding's volume is said to be water or mix."""
        rate = self.rate()
        return replace(rate, basis=basis) if rate and self._follows else rate

    def tell(self, outcome: str, advice: str) -> None:
        """Say what each calf gets of it, and what is to be thought of."""
        self.outcome.setText(outcome)
        self.advice.setText(advice)
        set_style_property(self.advice, "state", "care" if advice else "")

    def mixed_with(self, powder: Powder | None, water_temperature_c: float) -> None:
        """Tell which powder and water the rate is for; both enter the other bases."""
        self._powder, self._water_c = powder, water_temperature_c
        self._tell_same()

    def rate(self) -> MixingRate | None:
        """The rate as typed; None where something is not understood."""
        basis = RateBasis(self.basis.currentData())
        if basis in BY_SHARE:
            share = self.share.share()
            return None if share is None else MixingRate(basis=basis, solids_share=share, typed=self.share.told())
        mass, volume = self.mass.value(), self.volume.value()
        if mass is None or volume is None:
            return None
        typed = f"{self.mass.told()} / {self.volume.told()}"
        return MixingRate(basis=basis, powder_mass_g=mass, volume_ml=volume, typed=typed)

    def understood(self) -> bool:
        """Whether it can be kept; what is wrong is said beside the field."""
        fields = (self.share,) if self.basis.currentData() in BY_SHARE else (self.mass, self.volume)
        sound = [field.understood() for field in fields]
        if not all(sound):
            return False
        return self._ratio(loud=True) is not None

    def set_additives(self, there: bool) -> None:
        """Whether the group gets additives as well, of which the rate tells nothing."""
        if there != self._additives:
            self._additives = there
            self._tell_same()

    def shown_basis(self) -> RateBasis:
        """What the rate counts powder against, as chosen."""
        return RateBasis(self.basis.currentData())

    def _ratio(self, *, loud: bool = False) -> float | None:
        rate = self.rate()
        if rate is None or self._powder is None:
            return None
        try:
            ratio = powder_per_water(rate, self._powder, self._water_c)
        except CannotCompute as error:
            if loud:
                self._refuse(rate, in_words(error))
            return None
        percent = PERCENT * ratio / (1.0 + ratio)
        if loud and not SOLIDS_PCT[0] <= percent <= SOLIDS_PCT[1]:
            text = self.tr("That would be a mix of {percent} powder. Look at both figures and their units.")
            self._refuse(rate, text.format(percent=shown.share(percent / PERCENT)))
            return None
        return ratio

    def _refuse(self, rate: MixingRate, words: str) -> None:
        (self.share if rate.basis in BY_SHARE else self.mass).say(words, wrong=True)

    def _own_powder(self) -> None:
        self._powder_stays = True
        self._typed()

    def _own_rate(self) -> None:
        self._follows = False
        self._typed()

    def _typed(self) -> None:
        self._tell_same()
        self.edited.emit()

    def _change_basis(self) -> None:
        basis = RateBasis(self.basis.currentData())
        told = self._told_in(basis)
        self._shown, self._follows = basis, False
        self._basis.say("")
        if told is not None:
            self.load(told)
        self._show_fields()
        self._typed()

    def _told_in(self, basis: RateBasis) -> MixingRate | None:
        """The mix that the fields tell in the basis shown so far, in another one."""
        wanted = self.basis.currentIndex()
        self.basis.setCurrentIndex(self.basis.findData(self._shown))
        ratio, volume = self._ratio(), self.volume.value()
        self.basis.setCurrentIndex(wanted)
        if ratio is None or self._powder is None:
            return None
        on = volume or UNIT_VOLUME_ML[self.desk.system]
        return rate_in(basis, ratio, self._powder, self._water_c, on)

    def _show_fields(self) -> None:
        basis = RateBasis(self.basis.currentData())
        by_share = basis in BY_SHARE
        self.share.setVisible(by_share)
        self.mass.setVisible(not by_share)
        self.volume.setVisible(not by_share)
        captions = {
            RateBasis.ON_WATER: self.tr("On this much water"),
            RateBasis.MADE_UP: self.tr("Up to this much mix"),
            RateBasis.PER_FINISHED: self.tr("In this much mix"),
            RateBasis.SOLIDS: self.tr("Powder, by weight"),
            RateBasis.DRY_MATTER: self.tr("Dry matter, by weight"),
        }
        _rename(self.share if by_share else self.volume, captions[basis])

    def _tell_same(self) -> None:
        ratio, rate = self._ratio(), self.rate()
        if ratio is None or rate is None or self._powder is None or (self._follows and self._waits):
            for words in (self._same, self._example):
                words.setText("")
            return
        recipe = rate_example(rate, ratio, self._powder, self._water_c, self.desk.system)
        self._example.setText(self.tr("The recipe: {recipe}").format(recipe=recipe))
        volume = rate.volume_ml or UNIT_VOLUME_ML[self.desk.system]
        lines = same_mix(ratio, self._powder, self._water_c, volume, self.desk.system, self._shown)
        same = self.tr("The same mix, put otherwise:")
        if self._additives:
            same = self.tr("Without the additives, put otherwise:")
        self._same.setText("\n".join([same, *lines]))


def _rename(field: Amount, caption: str) -> None:
    field.caption.setText(caption)
    field.line.setAccessibleName(caption)


def same_mix(
    ratio: float, powder: Powder, water_c: float, volume_ml: float, system: UnitSystem, but: RateBasis
) -> list[str]:
    """The mix in every basis but one, on or in so much as its recipe has, and its osmolality.

    Made up to so much and fed as so much is one figure.
    """
    told = {but, RateBasis.PER_FINISHED, *([RateBasis.MADE_UP] if but is RateBasis.PER_FINISHED else [])}
    others = [basis for basis in RateBasis if basis not in told]
    lines = [rate_text(rate_in(basis, ratio, powder, water_c, volume_ml), system) for basis in others]
    return [*lines, osmolality_text(mix_on_water(volume_ml, ratio, powder, water_c))]

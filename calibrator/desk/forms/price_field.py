"""What a bag or tote costs, in the farm's currency; says what it understood."""

from __future__ import annotations

from PySide6.QtCore import QLocale

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import TextField
from calibrator.desk.money import NotUnderstood, OtherCurrency, names_of, price_text, read_price, usual_price
from calibrator.desk.speech import decimal_comma
from calibrator.desk.tongues import code_of
from calibrator.desk.widgets.unit_sentences import sentence, the_ways
from calibrator.model import Farm, UnitSystem
from calibrator.units.bare import Bare


class PriceField(TextField):
    """It may stay empty. What was typed is kept beside the number."""

    def __init__(self, desk: Desk, caption: str) -> None:
        super().__init__(caption, longest=30)
        self.desk = desk
        self.finished.connect(self.understood)

    def show_example(self) -> None:
        """In the currency of the farm, which may have changed."""
        self.line.setPlaceholderText(self._told(float(self._usual.example)))

    @property
    def currency(self) -> str:
        return self.desk.farm.currency if self.desk.farm else Farm.currency

    def value(self) -> float | None:
        """The price; None where the field is empty or not understood."""
        try:
            return self._read() if self.text() else None
        except NotUnderstood:
            return None

    def understood(self) -> bool:
        """Whether it can be kept; the sentence beneath tells what was understood or what is wrong."""
        if not self.text():
            self.say("")
            return True
        try:
            price = self._read()
        except OtherCurrency:
            told = self.tr("Prices are in {currency} here. Write the number alone; Set-up changes the currency.")
            self.say(told.format(currency=self.currency), wrong=True)
            return False
        except NotUnderstood as error:
            self.say(sentence(error), wrong=True, short=the_ways(error))
            return False
        self.say(self._told(price))
        return True

    @property
    def _usual(self) -> Bare:
        return usual_price(self.currency, in_pesos=self._in_pesos)

    @property
    def _in_pesos(self) -> bool:
        """Whether $ stands for pesos on this farm."""
        spanish = QLocale().language() == QLocale.Language.Spanish
        return spanish and self.desk.system is UnitSystem.METRIC

    def _read(self) -> float:
        names = names_of(self.currency, in_pesos=self._in_pesos, of_country=code_of(self.currency))
        return read_price(self.text(), self.currency, self._usual, names=names, decimal_comma=decimal_comma())

    def _told(self, price: float) -> str:
        return price_text(price, self.currency, decimal_comma=decimal_comma())

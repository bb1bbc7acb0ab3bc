"""What a bag or tote costs, in the farm's currency; says what it understood."""

from __future__ import annotations

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import TextField
from calibrator.desk.money import PRICE, NotUnderstood, price_text, read_price
from calibrator.desk.speech import decimal_comma
from calibrator.desk.widgets.unit_sentences import sentence
from calibrator.model import Farm


class PriceField(TextField):
    """It may stay empty. What was typed is kept beside the number."""

    def __init__(self, desk: Desk, caption: str) -> None:
        super().__init__(caption, longest=30)
        self.desk = desk
        self.finished.connect(self.understood)

    def show_example(self) -> None:
        """In the currency of the farm, which may have changed."""
        self.line.setPlaceholderText(price_text(float(PRICE.example), self.currency, decimal_comma=decimal_comma()))

    @property
    def currency(self) -> str:
        return self.desk.farm.currency if self.desk.farm else Farm.currency

    def value(self) -> float | None:
        """The price; None where the field is empty or not understood."""
        try:
            return read_price(self.text(), self.currency, decimal_comma=decimal_comma()) if self.text() else None
        except NotUnderstood:
            return None

    def understood(self) -> bool:
        """Whether it can be kept; the sentence beneath tells what was understood or what is wrong."""
        if not self.text():
            self.say("")
            return True
        try:
            price = read_price(self.text(), self.currency, decimal_comma=decimal_comma())
        except NotUnderstood as error:
            self.say(sentence(error), wrong=True)
            return False
        self.say(price_text(price, self.currency, decimal_comma=decimal_comma()))
        return True

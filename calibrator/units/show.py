"""Numbers as people read them. Every rounding is to the nearest step, halves away from zero.

Values are in g, mL, mm, °C, % and g/mL. What is no number (NaN, infinity) shows as a dash. Where the locale
writes decimals with a comma, `decimal_comma` asks for it.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from calibrator.model import UnitSystem
from calibrator.units.kinds import Kind
from calibrator.units.registry import default_unit, from_base, span_in, to_base
from calibrator.units.rounding import (
    decimals,
    exact_step,
    in_two,
    on_ruler,
    on_step,
    plain_step,
    round_to,
    scale_step,
    tellable,
    trimmed,
    uncertainty_places,
    with_comma,
)

HUNDREDTH_OZ_G = 0.28349523125
"""0.01 oz, a digit more than kitchen scales show; as a display step it tells grams to 0.1."""
_NOTHING = "–"
_TENTH = Fraction(1, 10)


def show_mass(
    mass_g: float,
    system: UnitSystem,
    *,
    resolution_g: float | None = None,
    style: str = "auto",
    decimal_comma: bool = False,
) -> str:
    """A weight to what the scale shows: "10.2 oz", from 4 lb "6 lb 4.0 oz" and "15 lb"; "289 g", from 1 kg "3.25 kg".

    `resolution_g` is the scale's display step. A step that is a plain number in the unit shown (0.1 oz, 5 g)
    is kept to; any other sets the decimals only. Beside pounds ounces are told to 0.1 at the finest. Without it:
    0.1 oz; 1 g, 10 g from 1 kg, 100 g from 100 kg, 1 kg from 1000 kg.
    `style` holds to one way: "oz", "lb_oz", "lb", "g" or "kg" ("auto" chooses).
    Raises ValueError for a resolution that is not above zero.
    """
    if not tellable(mass_g):
        return _NOTHING
    chosen = _mass_style(abs(mass_g), system) if style == "auto" else style
    unit = "oz" if chosen == "lb_oz" else chosen
    step = _mass_step(abs(mass_g), chosen)
    if resolution_g is not None:
        step = scale_step(from_base(exact_step(resolution_g), unit))
    if chosen == "lb_oz":
        step = max(step, _TENTH)
    amount = from_base(Fraction(mass_g), unit)
    if chosen != "lb_oz":
        return with_comma(f"{on_step(amount, step)} {unit}", decimal_comma)
    pounds, ounces = in_two(amount, step, 16)
    rest = f" {on_step(ounces, step)} oz" if step % 16 and ounces else ""
    return with_comma(f"{pounds} lb{rest}", decimal_comma)


def show_dose(
    mass_g: float,
    system: UnitSystem,
    *,
    least_g: float,
    resolution_g: float | None = None,
    decimal_comma: bool = False,
) -> str:
    """An additive's weight as in `show_mass`; below `least_g`, which the scale cannot weigh, finer and with the grams
    beside farm units: "0.14 oz (4.0 g)"."""
    if not tellable(mass_g) or mass_g >= least_g:
        return show_mass(mass_g, system, resolution_g=resolution_g, decimal_comma=decimal_comma)
    grams = show_mass(mass_g, UnitSystem.METRIC, resolution_g=0.1, decimal_comma=decimal_comma)
    if system is UnitSystem.METRIC:
        return grams
    return f"{show_mass(mass_g, system, resolution_g=HUNDREDTH_OZ_G, decimal_comma=decimal_comma)} ({grams})"


def show_mass_between(
    mean_g: float,
    low_g: float,
    high_g: float,
    system: UnitSystem,
    *,
    limits_g: Sequence[float] = (),
    decimal_comma: bool = False,
) -> tuple[str, str, str]:
    """A mean with the ends of its interval, all to one place of the mean's unit: "331 g", "326 g", "336 g".

    To 0.1 oz, 1 g or 10 g as in `show_mass`, and to a digit more only where half the interval is less than that
    (JCGM 100:2008, 7.2.6: no more digits than the uncertainty bears), or to as many more as it takes, 0.01 oz, 0.1 g
    or 0.001 kg at the finest, where one of the three would else seem to lie on a `limits_g` that it keeps within or
    goes beyond, or on its other side. Beside pounds never finer than 0.1 oz. No weight is below nought, and no end of
    its interval is told so, however few the fills.
    """
    told = mean_g, max(low_g, 0.0), high_g  # not-a-number stays
    if not all(tellable(mass) for mass in told):
        mean, low, high = (show_mass(mass, system, decimal_comma=decimal_comma) for mass in told)
        return mean, low, high
    style = _mass_style(abs(mean_g), system)
    unit = "oz" if style == "lb_oz" else style
    step = _mass_step(abs(mean_g), style)
    amounts = [from_base(Fraction(mass), unit) for mass in told]
    if style == "lb_oz":
        mean, low, high = (show_mass(mass, system, style=style, decimal_comma=decimal_comma) for mass in told)
        return mean, low, high
    if amounts[2] - amounts[1] < 2 * step:
        step /= 10
    limits = [from_base(Fraction(mass), unit) for mass in limits_g]
    finest = max(scale_step(from_base(exact_step(HUNDREDTH_OZ_G), unit)), Fraction(1, 1000))  # as limits are told
    while step > finest and any(_hidden(amount, limit, step) for amount in amounts for limit in limits):
        step /= 10
    mean, low, high = (with_comma(f"{on_step(amount, step)} {unit}", decimal_comma) for amount in amounts)
    return mean, low, high


def show_volume(volume_ml: float, system: UnitSystem, *, step: float | None = None, decimal_comma: bool = False) -> str:
    """Water as it is drawn: "2 1/4 qt", from 1 gal "5 gal 1 1/4 qt"; "1.9 L".

    `step` is in quarts or litres (without it 1/4 qt, 0.1 L). Raises ValueError for one not above zero.
    """
    if not tellable(volume_ml):
        return _NOTHING
    if system is UnitSystem.METRIC:
        litres, fine = from_base(Fraction(volume_ml), "L"), plain_step(0.1 if step is None else step)
        return with_comma(f"{on_step(litres, fine)} L", decimal_comma)
    quarts, fine = from_base(Fraction(volume_ml), "qt"), plain_step(0.25 if step is None else step)
    if abs(round_to(quarts, fine)) < 4:
        return with_comma(f"{on_ruler(quarts, fine)} qt", decimal_comma)
    gallons, rest = in_two(quarts, fine, 4)
    return with_comma(f"{gallons} gal {on_ruler(rest, fine)} qt" if rest else f"{gallons} gal", decimal_comma)


def show_typed_volume(volume_ml: float, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A volume that a person laid down, as of a feeding: never rounded to what water is measured by.

    In decimals to the hundredth, "2.25 qt" beside "3.17 qt", "3.0 L" or "2.15 L": fractions are for what is drawn.
    Raises ValueError for one not above zero.
    """
    if not tellable(volume_ml):
        return _NOTHING
    unit, steps = ("qt", (1.0, 0.1, 0.01)) if system is UnitSystem.FARM else ("L", (0.1, 0.01))
    amount = from_base(Fraction(volume_ml), unit)
    even = (step for step in steps if abs(amount - round_to(amount, plain_step(step))) < plain_step(0.005))
    return show_volume(volume_ml, system, step=next(even, steps[-1]), decimal_comma=decimal_comma)


def show_in_one_unit(volume_ml: float, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """About so much, as one number of the one unit that it is told in: "20 gal", "2.3 qt", "76 L".

    Gallons from 1 gal as in `show_volume`, whole ones from ten on, tenths below.
    """
    litres_or_quarts = "L" if system is UnitSystem.METRIC else "qt"
    gallons = system is UnitSystem.FARM and from_base(Fraction(volume_ml), "gal") >= 1
    unit = "gal" if gallons else litres_or_quarts
    amount = from_base(Fraction(volume_ml), unit)
    return with_comma(f"{decimals(amount, 0 if amount >= 10 else 1)} {unit}", decimal_comma)


def show_scoop_volume(volume_ml: float, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A scoop's volume: "20.3 fl oz" or "600 mL"."""
    if not tellable(volume_ml):
        return _NOTHING
    unit, step = ("fl oz", _TENTH) if system is UnitSystem.FARM else ("mL", Fraction(1))
    return with_comma(f"{on_step(from_base(Fraction(volume_ml), unit), step)} {unit}", decimal_comma)


def show_scoop_estimate(volume_ml: float, half_ml: float, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A scoop's volume with half its interval in one unit, then in the other's: "0.987 ± 0.012 qt (934 ± 11 mL)".

    In quarts from 3/4 qt, below that in fl oz; millilitres alone where the system is metric.
    """
    metric = show_with_uncertainty(volume_ml, half_ml, "mL", decimal_comma=decimal_comma)
    if system is UnitSystem.METRIC or not (tellable(volume_ml) and tellable(half_ml)):
        return metric
    unit = "qt" if from_base(Fraction(volume_ml), "qt") >= Fraction(3, 4) else "fl oz"
    told, spread = (float(from_base(Fraction(size), unit)) for size in (volume_ml, half_ml))
    return f"{show_with_uncertainty(told, spread, unit, decimal_comma=decimal_comma)} ({metric})"


def show_length(length_mm: float, system: UnitSystem, *, step: float | None = None, decimal_comma: bool = False) -> str:
    """A mark or a dimension: "1 5/16 in" to the nearest sixteenth, or "33 mm".

    `step` is in inches or millimetres. Raises ValueError for one not above zero.
    """
    if not tellable(length_mm):
        return _NOTHING
    if system is UnitSystem.METRIC:
        fine = plain_step(1 if step is None else step)
        return with_comma(f"{on_step(Fraction(length_mm), fine)} mm", decimal_comma)
    fine = plain_step(1 / 16 if step is None else step)
    return with_comma(f"{on_ruler(from_base(Fraction(length_mm), 'in'), fine)} in", decimal_comma)


def show_move(old_mm: float, new_mm: float, system: UnitSystem) -> str:
    """How far one line is from another, either way: the difference of both as `show_length` tells them.

    So that who takes 3/8 in from 9/16 in finds the 3/16 in that stand between them. The lines are in mm.
    """
    if not (tellable(old_mm) and tellable(new_mm)):
        return _NOTHING
    unit, step = ("mm", Fraction(1)) if system is UnitSystem.METRIC else ("in", Fraction(1, 16))
    old, new = (round_to(from_base(Fraction(mm), unit), step) for mm in (old_mm, new_mm))
    return show_length(float(to_base(abs(new - old), unit)), system)


def in_unit(value: float, unit: str) -> float:
    """A value of the base unit in a unit by its symbol, such as "fl oz"."""
    return float(from_base(Fraction(value), unit))


def in_default_unit(value: float, kind: Kind, system: UnitSystem) -> float:
    """A value of the base unit in the unit that bare numbers take, for the axis of a chart."""
    return float(from_base(Fraction(value), default_unit(kind, system)))


def span_in_default_unit(span: float, kind: Kind, system: UnitSystem) -> float:
    """A difference of the base unit in the unit that bare numbers take: 1 °C is 1.8 °F."""
    return float(span_in(Fraction(span), default_unit(kind, system)))


def span_from_default_unit(span: float, kind: Kind, system: UnitSystem) -> float:
    """A difference in the unit that bare numbers take, in the base unit: 1.8 °F is 1 °C."""
    return span / span_in_default_unit(1.0, kind, system)


def on_line_step(length_mm: float, system: UnitSystem) -> float:
    """A line's place as it is told and drawn: the nearest 1/16 in or 1 mm, in mm."""
    step = Fraction(line_step_mm(system))
    return float(round_to(Fraction(length_mm), step)) if tellable(length_mm) else length_mm


def line_in_both(length_mm: float, system: UnitSystem) -> tuple[str, str]:
    """A line's place as `show_length` tells it, and that same place by the other ruler: 1 15/16 in is 49 mm.

    Rounded by itself 49.6 mm would be 50 there, and whoever holds both rulers side by side would find them at odds.
    """
    stepped = on_line_step(length_mm, system)
    return show_length(stepped, system), show_length(stepped, other_system(system))


def line_step_mm(system: UnitSystem) -> float:
    """The step that lines on a scoop are told in: 1/16 in, or 1 mm."""
    return 25.4 / 16 if system is UnitSystem.FARM else 1.0


def show_temperature(temperature_c: float, system: UnitSystem) -> str:
    """Whole degrees: "110 °F", "43 °C"."""
    if not tellable(temperature_c):
        return _NOTHING
    unit = default_unit(Kind.TEMPERATURE, system)
    return f"{decimals(from_base(Fraction(temperature_c), unit), 0)} {unit}"


def whole_degrees(temperature_c: float, system: UnitSystem) -> int:
    """The number that `show_temperature` tells."""
    unit = default_unit(Kind.TEMPERATURE, system)
    return int(round_to(from_base(Fraction(temperature_c), unit), Fraction(1)))


def show_temperature_within(
    temperature_c: float, half_width_c: float, system: UnitSystem, *, decimal_comma: bool = False
) -> str:
    """A temperature with its doubt, both to a tenth, for no thermometer of the barn is finer: "99.0 ± 1.8 °F"."""
    if not (tellable(temperature_c) and tellable(half_width_c)):
        return _NOTHING
    unit = default_unit(Kind.TEMPERATURE, system)
    value, half = from_base(Fraction(temperature_c), unit), span_in(Fraction(half_width_c), unit)
    return with_comma(f"{decimals(value, 1)} ± {decimals(half, 1)} {unit}", decimal_comma)


def show_temperature_span(span_c: float, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """So many degrees, not a temperature: "1.8 °F", "1.0 °C"."""
    if not tellable(span_c):
        return _NOTHING
    unit = default_unit(Kind.TEMPERATURE, system)
    return with_comma(f"{decimals(span_in(Fraction(span_c), unit), 1)} {unit}", decimal_comma)


def density_unit(system: UnitSystem) -> tuple[str, float]:
    """The unit of a bulk density, and how many of it one g/mL is: g/mL, in farm units ounces that fill a quart."""
    if system is UnitSystem.METRIC:
        return "g/mL", 1.0
    return "oz/qt", float(span_in(Fraction(1), "oz") / span_in(Fraction(1), "qt"))


def show_density(
    g_per_ml: float,
    system: UnitSystem,
    half_width: float | None = None,
    *,
    interval: bool = True,
    brief: bool = False,
    unit: bool = True,
    decimal_comma: bool = False,
) -> str:
    """Bulk density: "0.512 g/mL", in farm units "17.1 oz/qt (0.512 g/mL)"; with its interval's half-width, g/mL, as
    `show_with_uncertainty` does.

    `interval` false leaves the half-width out, the value as precise as beside it.
    `brief` is for places without room: the farm's unit alone. `unit` false leaves the unit to a heading; brief, too.
    """
    if not (tellable(g_per_ml) and (half_width is None or tellable(half_width))):
        return _NOTHING
    name, per = density_unit(system)
    tail = f" {name}" if unit else ""
    digits = 3 if system is UnitSystem.METRIC else 1
    if half_width:
        told = show_with_uncertainty(g_per_ml * per, half_width * per, decimal_comma=decimal_comma)
        told = (told if interval else told.partition(" ± ")[0]) + tail
    else:
        told = with_comma(f"{decimals(Fraction(g_per_ml) * Fraction(per), digits)}{tail}", decimal_comma)
    if brief or not unit or system is UnitSystem.METRIC:
        return told
    return f"{told} ({with_comma(decimals(Fraction(g_per_ml), 3), decimal_comma)} g/mL)"


def show_percent(percent: float, digits: int = 1, *, decimal_comma: bool = False) -> str:
    """A percentage, 13 for thirteen hundredths: "13.0 %"."""
    return show_number(percent, digits, "%", decimal_comma=decimal_comma)


def show_typed_percent(percent: float, *, decimal_comma: bool = False) -> str:
    """A percentage as it was typed, to a hundredth and without noughts at its end: "20 %", "0.15 %"."""
    return with_comma(f"{trimmed(Fraction(percent), 2)} %", decimal_comma) if tellable(percent) else _NOTHING


def show_scoopfuls(count: float) -> str:
    """Scoopfuls as they are counted, parts as fractions: "3", "2 1/2", "1/4"."""
    whole, rest = divmod(Fraction(count).limit_denominator(100), 1)
    return " ".join(str(part) for part in (whole, rest) if part) or "0"


def with_sign(told: str, value: float) -> str:
    """A difference that is told without its sign, with the sign of its value, the real minus: "+2.4 %", "−1.0 %".

    What is told as nought has none: "0.0 %" is neither more nor less.
    """
    if not any(digit in told for digit in "123456789"):
        return told
    return f"{'−' if value < 0 else '+'}{told}"


def show_number(value: float, digits: int = 1, unit: str = "", *, decimal_comma: bool = False) -> str:
    """A number with so many decimals, and the unit behind it where one is given: "1892.7 mL"."""
    if not tellable(value):
        return _NOTHING
    return with_comma(f"{decimals(Fraction(value), digits)}{f' {unit}' if unit else ''}", decimal_comma)


def show_factor(value: float, *, decimal_comma: bool = False) -> str:
    """A plain factor to three digits, without noughts at its end: "0.0015", "1"."""
    return with_comma(trimmed(Fraction(value), 0), decimal_comma) if tellable(value) else _NOTHING


def show_with_uncertainty(value: float, uncertainty: float, unit: str = "", *, decimal_comma: bool = False) -> str:
    """A value and its uncertainty, both in `unit`: "289.4 ± 1.2 g".

    The uncertainty is rounded to two significant digits and the value to the same decimal place (JCGM
    100:2008, 7.2.6), halves away from zero. An uncertainty of nought is left out, and the value told to nine
    places. An uncertainty too small for nine places is told as if it were that large.
    """
    if not (tellable(value) and tellable(uncertainty)):
        return _NOTHING
    exact, spread = Fraction(value), abs(Fraction(uncertainty))
    tail = f" {unit}" if unit else ""
    if not spread:
        return with_comma(trimmed(exact, 9) + tail, decimal_comma)
    places = uncertainty_places(max(spread, Fraction(1, 10**8)))
    return with_comma(f"{decimals(exact, places)} ± {decimals(spread, places)}{tail}", decimal_comma)


def show_estimate(
    value: float, uncertainty: float, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False
) -> str:
    """`show_with_uncertainty` for values in the kind's base unit, told in the system's: "10.21 ± 0.04 oz"."""
    if not (tellable(value) and tellable(uncertainty)):
        return _NOTHING
    unit = default_unit(kind, system)
    told, spread = from_base(Fraction(value), unit), span_in(Fraction(uncertainty), unit)
    return show_with_uncertainty(float(told), float(spread), unit, decimal_comma=decimal_comma)


def show(value: float, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A value in the kind's base unit as its own `show_…` tells it; a count as a whole number."""
    match kind:
        case Kind.MASS:
            return show_mass(value, system, decimal_comma=decimal_comma)
        case Kind.VOLUME:
            return show_volume(value, system, decimal_comma=decimal_comma)
        case Kind.LENGTH:
            return show_length(value, system, decimal_comma=decimal_comma)
        case Kind.TEMPERATURE:
            return show_temperature(value, system)
        case Kind.PERCENT:
            return show_percent(value, decimal_comma=decimal_comma)
        case Kind.DENSITY:
            return show_density(value, system, decimal_comma=decimal_comma)
    return decimals(Fraction(value), 0) if tellable(value) else _NOTHING


def show_both(value: float, kind: Kind, system: UnitSystem, *, decimal_comma: bool = False) -> str:
    """A value in the person's units with the other system's in brackets: "1 5/16 in (33 mm)"."""
    if kind is Kind.LENGTH:
        value = on_line_step(value, system)
    told = show(value, kind, system, decimal_comma=decimal_comma)
    other = show(value, kind, other_system(system), decimal_comma=decimal_comma)
    return told if kind is Kind.DENSITY or other == told else f"{told} ({other})"


def other_system(system: UnitSystem) -> UnitSystem:
    """Metric for farm units, farm units for metric."""
    return UnitSystem.FARM if system is UnitSystem.METRIC else UnitSystem.METRIC


def _hidden(amount: Fraction, limit: Fraction, step: Fraction) -> bool:
    """Whether rounding hides on which side of a limit an amount lies."""
    told = round_to(amount, step)
    return (told < limit) != (amount < limit) or (told > limit) != (amount > limit)


def _mass_style(mass_g: float, system: UnitSystem) -> str:
    if system is UnitSystem.METRIC:
        return "kg" if round_to(Fraction(mass_g), Fraction(1)) >= 1000 else "g"
    return "lb_oz" if round_to(from_base(Fraction(mass_g), "oz"), _TENTH) >= 64 else "oz"


def _mass_step(mass_g: float, style: str) -> Fraction:
    if style == "g":
        return Fraction(1)
    if style == "kg" and mass_g >= 1_000_000:
        return Fraction(1)
    return Fraction(1, 100) if style == "kg" and mass_g < 100_000 else _TENTH

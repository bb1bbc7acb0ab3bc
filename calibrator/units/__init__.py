"""The one place that turns what people type into numbers, and numbers into what people read.

Belongs here: units and their spellings, the strict parser, rounding for people. Never here: a formula of
the trade, Qt, storage. pint only works out the factors, ahead of time and from a unit file of our own (it would
read `1,5 g` as 15 g, so it never sees typed text).
"""

from calibrator.units.bound import with_units_bound
from calibrator.units.edit import edit_text
from calibrator.units.kinds import SENTENCES, Kind, NotUnderstood, Quantity
from calibrator.units.meant import in_other_units
from calibrator.units.reading import example, read, with_unit
from calibrator.units.registry import default_unit
from calibrator.units.scale_line import Mask, MaskNotUnderstood, ScaleReading, read_mask
from calibrator.units.show import (
    HUNDREDTH_OZ_G,
    density_unit,
    in_default_unit,
    in_unit,
    line_in_both,
    line_step_mm,
    on_line_step,
    other_system,
    show,
    show_both,
    show_density,
    show_estimate,
    show_factor,
    show_in_one_unit,
    show_length,
    show_mass,
    show_mass_between,
    show_move,
    show_number,
    show_percent,
    show_scoop_estimate,
    show_scoop_volume,
    show_temperature,
    show_temperature_span,
    show_temperature_within,
    show_typed_percent,
    show_typed_volume,
    show_volume,
    show_with_uncertainty,
    span_from_default_unit,
    span_in_default_unit,
    whole_degrees,
)

__all__ = [
    "HUNDREDTH_OZ_G",
    "SENTENCES",
    "Kind",
    "Mask",
    "MaskNotUnderstood",
    "NotUnderstood",
    "Quantity",
    "ScaleReading",
    "default_unit",
    "density_unit",
    "edit_text",
    "example",
    "in_default_unit",
    "in_other_units",
    "in_unit",
    "line_in_both",
    "line_step_mm",
    "on_line_step",
    "other_system",
    "read",
    "read_mask",
    "show",
    "show_both",
    "show_density",
    "show_estimate",
    "show_factor",
    "show_in_one_unit",
    "show_length",
    "show_mass",
    "show_mass_between",
    "show_move",
    "show_number",
    "show_percent",
    "show_scoop_estimate",
    "show_scoop_volume",
    "show_temperature",
    "show_temperature_span",
    "show_temperature_within",
    "show_typed_percent",
    "show_typed_volume",
    "show_volume",
    "show_with_uncertainty",
    "span_from_default_unit",
    "span_in_default_unit",
    "whole_degrees",
    "with_unit",
    "with_units_bound",
]

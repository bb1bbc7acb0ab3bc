"""Mixing rates in words: which basis, and the same mix told in the other bases."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.speech import decimal_comma
from calibrator.model import MixingRate, PlanGroup, RateBasis, UnitSystem, VolumeMeans
from calibrator.science.feeding import fed_ml
from calibrator.science.mixing import Mix
from calibrator.units import show_mass, show_percent, show_typed_volume

translate = QCoreApplication.translate
UNIT_VOLUME_ML = {UnitSystem.FARM: 1892.705892, UnitSystem.METRIC: 1000.0}  # told on 2 qt, or on 1 L


def basis_name(basis: RateBasis) -> str:
    """What a rate counts powder against, as a choice in a list."""
    names = {
        RateBasis.ON_WATER: translate("RateWords", "powder added on top of water"),
        RateBasis.MADE_UP: translate("RateWords", "powder made up with water to a volume"),
        RateBasis.SOLIDS: translate("RateWords", "solids of the mix, as mixed"),
        RateBasis.DRY_MATTER: translate("RateWords", "dry matter of the mix"),
        RateBasis.PER_FINISHED: translate("RateWords", "powder in the mix as fed"),
    }
    return names[basis]


def rate_text(rate: MixingRate, system: UnitSystem) -> str:
    """A rate with its basis: "10.0 oz of powder on 2 qt of water"."""
    if rate.basis is RateBasis.SOLIDS:
        words = translate("RateWords", "{share} solids by weight of the mix, as mixed")
        return words.format(share=_share(rate.solids_share))
    if rate.basis is RateBasis.DRY_MATTER:
        words = translate("RateWords", "{share} dry matter by weight of the mix")
        return words.format(share=_share(rate.solids_share))
    words = {
        RateBasis.ON_WATER: translate("RateWords", "{powder} of powder on {volume} of water"),
        RateBasis.MADE_UP: translate("RateWords", "{powder} of powder made up with water to {volume} of mix"),
        RateBasis.PER_FINISHED: translate("RateWords", "{powder} of powder in every {volume} of mix as fed"),
    }[rate.basis]
    return words.format(powder=mass_text(rate.powder_mass_g, system), volume=_volume(rate.volume_ml, system))


def group_text(group: PlanGroup, mix: Mix, system: UnitSystem) -> str:
    """What each calf of a group gets; with its powder water is more, and who feeds only so much feeds too little."""
    if group.volume_means is VolumeMeans.WATER:
        words = translate("RateWords", "{volume} of water for each calf, feed each {mix} of mix")
    else:
        words = translate("RateWords", "{volume} of finished mix for each calf")
    return words.format(volume=_volume(group.volume_ml, system), mix=_volume(fed_ml(group, mix), system))


def strength_text(mix: Mix, system: UnitSystem) -> str:
    """How strong a mix is, in one line that says which solids; grams in a litre only where litres are used."""
    words = translate("RateWords", "{solids} solids as mixed (powder with its own water), {dry} dry matter")
    if system is UnitSystem.METRIC:
        words = translate(
            "RateWords",
            "{solids} solids as mixed (powder with its own water), {dry} dry matter, {grams} g in a litre of mix",
        )
    return words.format(
        solids=_share(mix.solids_share), dry=_share(mix.dry_matter_share), grams=round(mix.powder_g_per_l)
    )


def osmolality_text(mix: Mix) -> str:
    """The osmolality, named as the estimate that it is."""
    words = translate("RateWords", "osmolality about {value} mOsm/kg (an estimate: give or take {spread})")
    return words.format(value=_tens(mix.osmolality_mosm_per_kg), spread=_tens(2 * mix.osmolality_u))


def mass_text(mass_g: float, system: UnitSystem) -> str:
    return show_mass(mass_g, system, decimal_comma=decimal_comma())


def _volume(volume_ml: float, system: UnitSystem) -> str:
    return show_typed_volume(volume_ml, system, decimal_comma=decimal_comma())


def _share(share: float) -> str:
    return show_percent(100 * share, decimal_comma=decimal_comma())


def _tens(value: float) -> int:
    return round(value / 5) * 5

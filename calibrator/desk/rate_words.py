"""Mixing rates in words: which basis, and the same mix told in the other bases."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.speech import decimal_comma
from calibrator.model import MixingRate, PlanGroup, RateBasis, UnitSystem, VolumeMeans
from calibrator.science.feeding import fed_ml
from calibrator.science.mixing import Mix, Powder, mix_on_water, mix_to_volume
from calibrator.units import Kind, read, show_mass, show_typed_volume

translate = QCoreApplication.translate
BY_SHARE = (RateBasis.SOLIDS, RateBasis.DRY_MATTER)
UNIT_VOLUME_ML = {UnitSystem.FARM: 1892.705892, UnitSystem.METRIC: 1000.0}  # told on 2 qt, or on 1 L


def basis_name(basis: RateBasis) -> str:
    """What a rate counts powder against, as a choice in a list."""
    names = {
        RateBasis.ON_WATER: translate("RateWords", "Powder on top of water"),
        RateBasis.MADE_UP: translate("RateWords", "Powder, filled up with water"),
        RateBasis.SOLIDS: translate("RateWords", "Percent powder in the mix"),
        RateBasis.DRY_MATTER: translate("RateWords", "Percent dry matter in the mix"),
        RateBasis.PER_FINISHED: translate("RateWords", "Powder per volume of mix fed"),
    }
    return names[basis]


def rate_text(rate: MixingRate, system: UnitSystem) -> str:
    """A rate with its basis: "10.0 oz of powder on 2 qt of water"."""
    if rate.basis is RateBasis.SOLIDS:
        words = translate("RateWords", "{share} solids by weight of the mix, as mixed")
        return words.format(share=shown.share(rate.solids_share))
    if rate.basis is RateBasis.DRY_MATTER:
        words = translate("RateWords", "{share} dry matter by weight of the mix")
        return words.format(share=shown.share(rate.solids_share))
    words = {
        RateBasis.ON_WATER: translate("RateWords", "{powder} of powder on {volume} of water"),
        RateBasis.MADE_UP: translate("RateWords", "{powder} of powder made up with water to {volume} of mix"),
        RateBasis.PER_FINISHED: translate("RateWords", "{powder} of powder in every {volume} of mix as fed"),
    }[rate.basis]
    return words.format(powder=mass_text(rate.powder_mass_g, system), volume=_volume(rate.volume_ml, system))


def rate_example(rate: MixingRate, ratio: float, powder: Powder, water_c: float, system: UnitSystem) -> str:
    """What a rate is, by its own figures: what is poured together, and what comes of it."""
    if rate.basis in BY_SHARE:
        return _share_example(rate, mix_on_water(UNIT_VOLUME_ML[system], ratio, powder, water_c), powder, system)
    words = {
        RateBasis.ON_WATER: translate("RateWords", "{powder} of powder on top of {volume} of water: {mix} of mix."),
        RateBasis.MADE_UP: translate(
            "RateWords", "{powder} of powder, filled up with water to {volume} of mix: {water} of water."
        ),
        RateBasis.PER_FINISHED: translate(
            "RateWords", "{volume} of mix as the calves drink it: {powder} of powder in it, {water} of water."
        ),
    }[rate.basis]
    make = mix_on_water if rate.basis is RateBasis.ON_WATER else mix_to_volume
    made = make(rate.volume_ml, ratio, powder, water_c)
    return words.format(
        powder=mass_text(rate.powder_mass_g, system),
        volume=_volume(rate.volume_ml, system),
        mix=_volume(made.volume_ml, system),
        water=_volume(made.water_ml, system),
    )


def _share_example(rate: MixingRate, mix: Mix, powder: Powder, system: UnitSystem) -> str:
    solids = mix.solids_share
    told = {"powder": _of_hundred(solids, system), "water": _of_hundred(1 - solids, system)}
    told |= {"mix": _of_hundred(1.0, system), "dry": _of_hundred(rate.solids_share, system)}
    if rate.basis is RateBasis.SOLIDS:
        return translate("RateWords", "{powder} of powder and {water} of water make {mix} of mix.").format(**told)
    words = translate(
        "RateWords", "{mix} of mix hold {dry} of dry matter: {powder} of powder, of which {share} is water."
    )
    return words.format(share=shown.share(powder.water_share), **told)


def _of_hundred(share: float, system: UnitSystem) -> str:
    """So much of a hundred grams or ounces of mix, so that the percent is seen in it."""
    one, style = (1.0, "g") if system is UnitSystem.METRIC else (read("1 oz", Kind.MASS, system).value, "oz")
    places = 1 if share < 1 else 0
    return show_mass(
        100 * share * one, system, resolution_g=one / 10**places, style=style, decimal_comma=decimal_comma()
    )


def group_text(group: PlanGroup, mix: Mix, system: UnitSystem) -> str:
    """What each calf of a group gets; with its powder water is more, and who feeds only so much feeds too little."""
    if group.volume_means is VolumeMeans.WATER:
        words = translate("RateWords", "{volume} of water for each calf, feed each {mix} of mix")
    else:
        words = translate("RateWords", "{volume} of finished mix for each calf")
    return words.format(volume=_volume(group.volume_ml, system), mix=_volume(fed_ml(group, mix), system))


def strength_text(mix: Mix, system: UnitSystem) -> str:
    """How strong a mix is, in one line that says which solids; grams in a litre only where litres are used."""
    words = translate("RateWords", "{solids} solids as mixed, {dry} dry matter (without the powder's own water)")
    if system is UnitSystem.METRIC:
        words = translate(
            "RateWords",
            "{solids} solids as mixed, {dry} dry matter (without the powder's own water), {grams} g in a liter of mix",
        )
    return words.format(
        solids=shown.share(mix.solids_share), dry=shown.share(mix.dry_matter_share), grams=round(mix.powder_g_per_l)
    )


def osmolality_text(mix: Mix) -> str:
    """The osmolality, named as the estimate that it is."""
    words = translate("RateWords", "osmolality about {value} mOsm/kg (what is dissolved; an estimate: ± {spread})")
    return words.format(
        value=shown.osmolality(mix.osmolality_mosm_per_kg), spread=shown.osmolality(2 * mix.osmolality_u)
    )


def mass_text(mass_g: float, system: UnitSystem) -> str:
    return show_mass(mass_g, system, decimal_comma=decimal_comma())


def _volume(volume_ml: float, system: UnitSystem) -> str:
    return show_typed_volume(volume_ml, system, decimal_comma=decimal_comma())

"""Where a mix stands beside the strengths that are aimed at, in a sentence each. No window needed."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.science.bands import OSMOLALITY_MOSM_PER_KG, OTHER_OSMOLALITY_RISK, SOLIDS_SHARE, Band, band
from calibrator.science.mixing import Mix

translate = QCoreApplication.translate


def strength_cautions(mix: Mix) -> str:
    """What is to be thought of before such a mix is fed; blank where it lies within both aims."""
    told = [text for text in (_solids(mix), osmolality_caution(mix)) if text]
    if told:
        told.append(_who_decides())
    return " ".join(told)


def solids_caution(mix: Mix) -> str:
    """How far a mix lies from the usual solids; blank within the aim."""
    told = _solids(mix)
    return f"{told} {_who_decides()}" if told else ""


def at_risk(mix: Mix) -> bool:
    """Whether it is stronger than calves are known to stand."""
    return Band.RISK in (
        band(mix.solids_share, SOLIDS_SHARE),
        band(mix.osmolality_mosm_per_kg, OSMOLALITY_MOSM_PER_KG),
    )


def _who_decides() -> str:
    return translate("StrengthWords", "The label and your veterinarian decide.")


def _solids(mix: Mix) -> str:
    texts = {
        Band.BELOW: translate("StrengthWords", "{value} solids is below the usual aim of {low} to {high}."),
        Band.ABOVE: translate("StrengthWords", "{value} solids is above the usual aim of {low} to {high}."),
        Band.RISK: translate(
            "StrengthWords", "{value} solids is above {risk}: calves may scour. The aim is {low} to {high}."
        ),
    }
    low, high, risk = SOLIDS_SHARE.low, SOLIDS_SHARE.high, SOLIDS_SHARE.risk
    told = texts.get(band(round(mix.solids_share, 3), SOLIDS_SHARE), "")  # as told: 12.0 % is not below 12 %
    return told.format(
        value=shown.share(mix.solids_share),
        low=shown.share(low, 0),
        high=shown.share(high, 0),
        risk=shown.share(risk, 0),
    )


def osmolality_caution(mix: Mix) -> str:
    """Where the osmolality stands, with its doubt; blank within the aim.

    Low osmolality harms nobody: below the aim nothing is said. The limits are common practice, no source; so it
    may be called a risk where the solids, by their own limits, are only above the aim. A limit that the estimate's
    spread reaches over is only "may be" passed.
    """
    surely = {
        Band.ABOVE: translate(
            "StrengthWords",
            "Osmolality of about {value} (give or take {spread}) is above the usual aim of {low} to {high} mOsm/kg.",
        ),
        Band.RISK: translate(
            "StrengthWords",
            "Osmolality of about {value} (give or take {spread}) is above {risk} mOsm/kg: keep fresh water before the "
            "calves. By common practice scours are a risk from there on.",
        ),
    }
    perhaps = {
        Band.ABOVE: translate(
            "StrengthWords",
            "Osmolality of about {value} (give or take {spread}) may be above the usual aim of {low} to {high} "
            "mOsm/kg.",
        ),
        Band.RISK: translate(
            "StrengthWords",
            "Osmolality of about {value} (give or take {spread}) may be above {risk} mOsm/kg: keep fresh water before "
            "the calves. By common practice scours are a risk from there on.",
        ),
    }
    limits = OSMOLALITY_MOSM_PER_KG
    found = band(mix.osmolality_mosm_per_kg, limits)
    least = max(0.0, mix.osmolality_mosm_per_kg - 2 * mix.osmolality_u)
    told = (surely if band(least, limits) is found else perhaps).get(found, "")
    if found is Band.RISK and mix.osmolality_mosm_per_kg + 2 * mix.osmolality_u < OTHER_OSMOLALITY_RISK:
        other = translate("StrengthWords", "Other advice sees it only above {other} mOsm/kg.")
        told = f"{told} {other}"
    return told.format(
        value=shown.osmolality(mix.osmolality_mosm_per_kg),
        spread=shown.osmolality(2 * mix.osmolality_u),
        low=round(limits.low),
        high=round(limits.high),
        risk=round(limits.risk),
        other=round(OTHER_OSMOLALITY_RISK),
    )

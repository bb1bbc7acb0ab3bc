"""A mix that is off, put right: powder or water to add, what it comes to, and never over the brim."""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum

from calibrator.model import Composition, Vessel
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, positive
from calibrator.science.heat import WATER_HEAT_KJ_PER_KG_C
from calibrator.science.mixing import Powder
from calibrator.science.powder import specific_heat
from calibrator.science.vessels import usable_ml
from calibrator.science.water import density_g_per_ml
from calibrator.values import dataclass


class Add(StrEnum):
    """What a correction adds."""

    POWDER = "powder"
    WATER = "water"
    NOTHING = "nothing"


@dataclass(frozen=True)
class Batch:
    """What is in the vessel: volume of mix as it is now, its temperature, its solids as a share."""

    volume_ml: float
    temperature_c: float
    solids_share: float


@dataclass(frozen=True)
class Addition:
    """What goes in: temperatures of the powder as stored and of the water to add.

    `powder` is all that is weighed in, as one; `shares` tell how much of it is powder (first) and each additive.
    """

    powder: Powder
    composition: Composition
    powder_c: float = 20.0
    water_c: float = 43.0
    shares: tuple[float, ...] = (1.0,)


FAR_OFF_SHARE = 0.15
"""A mix that seems so much thinner or stronger than wanted is stirred and read again before anything is added: powder
that lies on the floor reads like powder that is missing. Common practice, no source."""


@dataclass(frozen=True)
class Correction:
    """What to do. First `take_out_ml` of mix goes elsewhere (0 where there is room), then so much is added.

    `powder_g` is the powder alone, `others_g` what each additive is in proportion to it. `volume_after_ml` and
    `temperature_after_c` are of what is in the vessel then; it never passes the usable volume.
    """

    add: Add
    powder_g: float
    water_ml: float
    take_out_ml: float
    volume_after_ml: float
    temperature_after_c: float
    solids_after: float
    off_share: float = 0.0  # solids as read ÷ target − 1
    others_g: tuple[float, ...] = ()

    @property
    def far_off(self) -> bool:
        """Whether a poor stir or a wrong reading is likelier than so large a slip."""
        return abs(self.off_share) > FAR_OFF_SHARE

    @property
    def fits(self) -> bool:
        """Whether the vessel holds it without anything taken out."""
        return self.take_out_ml <= 0


def _mix_mass_g(batch: Batch, powder: Powder) -> float:
    water = 1 / density_g_per_ml(batch.temperature_c)
    per_gram = (1 - batch.solids_share) * water + batch.solids_share * powder.specific_volume_ml_per_g
    return batch.volume_ml / per_gram


def _after_c(mass_g: float, batch: Batch, powder_g: float, water_g: float, addition: Addition) -> float:
    dry = specific_heat(addition.composition, (batch.temperature_c + addition.powder_c) / 2)
    mix = mass_g * ((1 - batch.solids_share) * WATER_HEAT_KJ_PER_KG_C + batch.solids_share * dry)
    powder, water = powder_g * dry, water_g * WATER_HEAT_KJ_PER_KG_C
    heat = mix * batch.temperature_c + powder * addition.powder_c + water * addition.water_c
    return heat / (mix + powder + water)


def correct(batch: Batch, target_share: float, addition: Addition, vessel: Vessel | None = None) -> Correction:
    """What brings the mix in the vessel to the target.

    Too thin: powder = mass · (target − solids) / (1 − target). Too strong: water = mass · (solids ÷ target −
    1). Conservation of mass, additive volumes; temperatures by specific heats (Choi and Okos 1986). Where
    the vessel's usable volume would be passed, so much mix is taken out first that the corrected rest just
    fits. Raises CannotCompute for impossible figures and for a vessel that is over its usable volume even
    with nothing added.
    """
    positive(batch.volume_ml, "The volume of mix in the vessel")
    between(batch.solids_share, 0.0, 0.5, "The solids of the mix", "0 and 50 %")
    target = between(target_share, 0.01, 0.5, "The target", "1 and 50 % solids")
    between(batch.temperature_c, 0.0, 100.0, "The temperature of the mix", "32 and 212 °F (0 and 100 °C)")
    whole = _needed(batch, target, addition)
    if vessel is None:
        return whole
    room = usable_ml(vessel)
    if batch.volume_ml > vessel.rim_volume_ml * (1 + 1e-9):
        raise CannotCompute("This vessel does not hold so much mix: check the volume, or choose the vessel it is in.")
    if whole.volume_after_ml <= room * (1 + 1e-9):
        return whole
    return _with_room_made(whole, batch, room)


def _needed(batch: Batch, target: float, addition: Addition) -> Correction:
    mass = _mix_mass_g(batch, addition.powder)
    if batch.solids_share < target:
        powder, water = mass * (target - batch.solids_share) / (1 - target), 0.0
    else:
        powder, water = 0.0, mass * (batch.solids_share / target - 1)
    water_ml = water / density_g_per_ml(addition.water_c)
    kind = Add.POWDER if powder > 0 else Add.WATER if water > 0 else Add.NOTHING
    return Correction(
        add=kind,
        powder_g=powder * addition.shares[0],
        water_ml=water_ml,
        take_out_ml=0.0,
        volume_after_ml=batch.volume_ml + powder * addition.powder.specific_volume_ml_per_g + water_ml,
        temperature_after_c=_after_c(mass, batch, powder, water, addition),
        solids_after=target,
        off_share=batch.solids_share / target - 1,
        others_g=tuple(powder * share for share in addition.shares[1:]),
    )


def _with_room_made(whole: Correction, batch: Batch, room_ml: float) -> Correction:
    """Everything scales with what is left in the vessel, the temperature stays."""
    kept = room_ml / whole.volume_after_ml
    return replace(
        whole,
        powder_g=whole.powder_g * kept,
        others_g=tuple(each * kept for each in whole.others_g),
        water_ml=whole.water_ml * kept,
        take_out_ml=batch.volume_ml * (1 - kept),
        volume_after_ml=room_ml,
    )

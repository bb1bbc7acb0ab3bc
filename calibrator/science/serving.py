"""When each group's turn comes, and how warm the mix still is for the last calf of a batch."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import positive
from calibrator.science.heat import TOO_COOL_C, Cooling
from calibrator.values import dataclass


@dataclass(frozen=True)
class Turn:
    """A group to be fed: calves, equal batches they are mixed in, and how warm a batch is when mixed."""

    calves: int
    batches: int
    mixed_c: float


@dataclass(frozen=True)
class Served:
    """A group's turn in minutes from the first calf on.

    `last_calf_c` is how warm a batch still is for its last calf; None where it is not known how the vessel cools.
    """

    starts_min: float
    ends_min: float
    last_calf_c: float | None

    @property
    def too_cool(self) -> bool:
        """Whether the last calf of a batch gets it below 85 °F (29.4 °C); common practice, no source."""
        return self.last_calf_c is not None and self.last_calf_c < TOO_COOL_C


def serve(turns: Sequence[Turn], calves_per_minute: float, cooling: Cooling | None) -> tuple[Served, ...]:
    """The groups one after another, each batch mixed when it is its turn; cooling by Newton's law.

    Raises CannotCompute unless the pace is above zero and every group has calves and a batch.
    """
    pace = positive(calves_per_minute, "The pace of feeding")
    served: list[Served] = []
    begun = 0.0
    for turn in turns:
        if turn.calves < 1 or turn.batches < 1:
            raise CannotCompute("A batch needs at least one calf.")
        batch = turn.calves / turn.batches / pace
        last = cooling.temperature_c(turn.mixed_c, batch) if cooling else None
        ends = begun + turn.calves / pace
        served.append(Served(begun, ends, last))
        begun = ends
    return tuple(served)

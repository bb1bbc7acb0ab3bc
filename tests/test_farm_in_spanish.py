"""The Spanish names of the sample farm."""

from __future__ import annotations

import json

from calibrator.records.paths import sample_lots_folder
from tests.farm_in_spanish import NAMES


def test_every_name_is_one_of_the_sample_farm() -> None:
    text = (sample_lots_folder() / "season.json").read_text("utf-8")
    assert [name for name in NAMES if json.dumps(name) not in text] == []

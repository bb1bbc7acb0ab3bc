"""Weighs three fills, waits for a line, and weighs on without end; each fill is told once it is acknowledged.

python weigh_until_killed.py URL FOLDER WEIGH_IN < lines
"""

from __future__ import annotations

import sys
from datetime import UTC, datetime
from itertools import count
from pathlib import Path

from calibrator.desk.guide import Guide
from calibrator.model import FillWay, WeighIn
from calibrator.records import Records
from calibrator.records.outbox import Outbox


def main(url: str, folder: Path, weigh_in_id: str) -> None:
    with Records.open(url) as records:
        outbox = Outbox.beside(folder, records.url)
        records.while_away(outbox)
        records.follow()
        guide = Guide(records, records.find(WeighIn, weigh_in_id), lambda: datetime.now(UTC), outbox)
        for number in count():
            print(guide.add_fill(FillWay.LEVEL, number + 1, 330.0 + number % 7, "330 g").id, flush=True)
            if number == 2:
                sys.stdin.readline()


if __name__ == "__main__":
    main(sys.argv[1], Path(sys.argv[2]), sys.argv[3])

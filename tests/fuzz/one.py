"""One target under the coverage-guided fuzzer, called by `tests.fuzz`: `… tests.fuzz.one NAME RUNS SEED FOLDER`."""

from __future__ import annotations

import sys

import atheris

with atheris.instrument_imports(include=["calibrator"]):
    from tests.fuzz.targets import TARGETS


def main(name: str, runs: int, seed: str, folder: str) -> None:
    target = TARGETS[name]
    told = {"runs": 0, "accepted": 0}

    def once(data: bytes) -> None:
        told["accepted"] += target(data)
        told["runs"] += 1
        if told["runs"] == runs:  # the fuzzer ends the process itself
            print(f"runs {told['runs']} accepted {told['accepted']}", flush=True)

    flags = [f"-runs={runs}", f"-seed={seed}", "-max_len=160", "-timeout=20", f"-artifact_prefix={folder}/{name}-"]
    atheris.Setup([sys.argv[0], *flags, "-verbosity=0"], once)
    atheris.Fuzz()


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]), sys.argv[3], sys.argv[4])

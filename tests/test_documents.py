"""What README and DEVELOPERS say is so: commands, files, the top of the project."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
README = (ROOT / "README.md").read_text("utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text("utf-8")
TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "calibrator", "resources", "tests", "sample_lots"}


def block(mark: str) -> str:
    found = re.search(rf"<!-- {mark} -->\n```\n(.*?)\n```", README, re.DOTALL)
    assert found, f"the README has no {mark} command"
    return found.group(1)


def test_the_readme_opens_with_the_job() -> None:
    first = README.split("\n\n")[1]
    for word in ("milk replacer", "scoop", "lot", "density", "fill mark", "wall chart"):
        assert word in first


@pytest.mark.parametrize("mark", ["start", "test"])
def test_each_command_stands_on_one_line_and_sets_up_everything(mark: str) -> None:
    command = block(mark)
    assert "\n" not in command
    assert command.startswith("python3 -m venv .venv && .venv/bin/pip install")


def test_ci_takes_its_test_command_from_the_readme() -> None:
    script = (ROOT / ".ci" / "run").read_text("utf-8")
    extract = re.search(r"command=\$\((awk .*)\)\n", script)
    assert extract
    told = subprocess.run(["bash", "-c", extract.group(1)], cwd=ROOT, capture_output=True, text=True, check=True)
    assert told.stdout.strip() == block("test")


def test_the_system_packages_are_named_on_one_line_for_ci() -> None:
    assert len(re.findall(r"^sudo apt-get install -y ", README, re.MULTILINE)) == 1


SPOKEN = re.sub(r"```.*?```", "", README + DEVELOPERS, flags=re.DOTALL).replace("_XX", "_es")
IN_CODE = sorted(set(re.findall(r"`([^`\n]+)`", SPOKEN)))
MADE = ("dist/",)  # by the commands that are told
SOURCES = [path for room in ("calibrator", "tests") for path in sorted((ROOT / room).rglob("*.py"))]
PROGRAM = "\n".join(path.read_text("utf-8") for path in SOURCES)
FILES = {path.name for room in TOP for path in (ROOT / room).rglob("*")} | TOP


def told(pattern: str) -> list[str]:
    """What the documents name in this way."""
    return sorted({found for text in IN_CODE for found in re.findall(pattern, text)})


@pytest.mark.parametrize("path", told(r"(?<![\w./])[\w.]+(?:/[\w.]+)+/?|^[\w.]+/$"))
def test_files_that_the_documents_name_exist(path: str) -> None:
    rooms = (ROOT, ROOT / "calibrator")
    assert path.startswith((*MADE, ".venv/")) or any((room / path).exists() for room in rooms)


@pytest.mark.parametrize("name", told(r"^\w+\.(?:py|md|ts|toml)$"))
def test_files_that_the_documents_name_without_their_folder_exist(name: str) -> None:
    assert name in FILES


@pytest.mark.parametrize("module", told(r"\btests(?:\.\w+)+"))
def test_commands_that_the_documents_name_exist(module: str) -> None:
    path = ROOT / module.replace(".", "/")
    assert path.with_suffix(".py").exists() or (path / "__main__.py").exists()


@pytest.mark.parametrize("option", told(r"--\w[\w-]*"))
def test_options_that_the_documents_name_exist(option: str) -> None:
    assert f'"{option}"' in PROGRAM


@pytest.mark.parametrize("name", told(r"^(?:desk\.)?([A-Za-z]\w+)(?:\(…\))?$"))
def test_names_that_the_documents_explain_are_in_the_program(name: str) -> None:
    room = ROOT / "calibrator" / name
    written = rf"\b(?:class|def) {name}\b|^{name}\b.* = |\bself\.{name} = |\bimport .*\b{name}\b"
    assert room.exists() or room.with_suffix(".py").exists() or re.search(written, PROGRAM, re.MULTILINE)


def test_the_readme_counts_the_outside_checks() -> None:
    kept = (ROOT / "tests" / "outside" / "CHECKS.md").read_text("utf-8")
    count = re.search(r"^(\d+) checks from (\d+) sources", kept, re.MULTILINE)
    assert count
    assert f"[{count[1]} checks against {count[2]} published sources" in README


def test_nothing_else_stands_at_the_top() -> None:
    told = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=False)
    tops = {line.split("/")[0] for line in told.stdout.splitlines()}
    assert {top for top in tops if not top.startswith(".")} <= TOP


@pytest.mark.parametrize("picture", sorted(set(re.findall(r"\]\((resources/[^)]+)\)", README))))
def test_pictures_in_the_readme_exist(picture: str) -> None:
    assert (ROOT / picture).exists()

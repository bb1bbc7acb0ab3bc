"""What the program defines, the program uses: nothing ships that only tests call."""

from __future__ import annotations

import ast
import re
from collections import defaultdict
from collections.abc import Iterator, Mapping
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
Name = tuple[str, str]  # a module and what it defines

BEGINS = {("calibrator.__main__", "main"), ("calibrator.desk.app", "run"), ("calibrator.desk.app", "make_application")}
BY_NAME = re.compile(r"calibrator\.(records\.migrations\..*|desk\.pages\.\w+\.\w+(Page|Dialog))")
FOR_TRANSLATORS = {"SENTENCES", "WHAT", "LIMITS"}


def module_of(file: Path) -> str:
    return ".".join(file.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__")


class Program:
    """Who defines what, and who uses it, by what stands in the modules."""

    def __init__(self, modules: Mapping[str, ast.Module]) -> None:
        self.modules = modules
        self.defined = {(name, one) for name, tree in modules.items() for part in tree.body for one in defined(part)}
        self.imported = {told: source for name, tree in modules.items() for told, source in self._imports(name, tree)}

    def dead(self) -> list[str]:
        """What is not reached from where the program begins, nor from what runs as a module is loaded."""
        uses: dict[Name, set[Name]] = defaultdict(set)
        reached = {
            name
            for name in self.defined
            if name in BEGINS
            or BY_NAME.fullmatch(".".join(name))
            or name[1] in FOR_TRANSLATORS
            or name[1].startswith("__")
        }
        for module, tree in self.modules.items():
            for part in tree.body:
                names = defined(part)
                for name in names - {"__all__"}:
                    uses[module, name] |= set(self._used(module, part))
                if not names:
                    reached |= set(self._used(module, part))
        waiting = list(reached)
        while waiting:
            fresh = uses[waiting.pop()] - reached
            reached |= fresh
            waiting += fresh
        return sorted(f"{module}.{name}" for module, name in self.defined - reached)

    def _imports(self, module: str, tree: ast.Module) -> Iterator[tuple[Name, Name]]:
        """What a module calls by which name and where that comes from; a whole module is a name without a part."""
        for node in ast.walk(tree):
            for one in node.names if isinstance(node, ast.ImportFrom) else ():
                whole = f"{node.module}.{one.name}"
                yield (
                    (module, one.asname or one.name),
                    ((whole, "") if whole in self.modules else (node.module, one.name)),
                )

    def _used(self, module: str, part: ast.AST) -> Iterator[Name]:
        for node in ast.walk(part):
            if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load):
                yield self._origin((module, node.id))
            elif isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
                whose, part_of = self.imported.get((module, node.value.id), ("", "?"))
                if not part_of:
                    yield self._origin((whose, node.attr))

    def _origin(self, name: Name) -> Name:
        while name not in self.defined and name in self.imported:
            name = self.imported[name]
        return name


def defined(statement: ast.stmt) -> set[str]:
    if isinstance(statement, ast.FunctionDef | ast.ClassDef):
        return {statement.name}
    targets = statement.targets if isinstance(statement, ast.Assign) else [getattr(statement, "target", None)]
    return {name.id for target in targets if target for name in ast.walk(target) if isinstance(name, ast.Name)}


def test_all_that_is_defined_is_used() -> None:
    files = sorted((ROOT / "calibrator").rglob("*.py"))
    assert Program({module_of(file): ast.parse(file.read_text("utf-8")) for file in files}).dead() == []


def test_what_only_the_dead_call_is_dead_too() -> None:
    told = {
        "calibrator.__main__": "from calibrator import room\nfrom calibrator.room import used as known\n"
        "def main(): return known() + room.also()",
        "calibrator.room": "__all__ = ['lonely']\nHERE = 1\ndef used(): return HERE\ndef also(): return used()\n"
        "def lonely(): return called()\ndef called(): return called() + THERE\nTHERE = 2",
    }
    dead = Program({name: ast.parse(text) for name, text in told.items()}).dead()
    assert dead == [f"calibrator.room.{name}" for name in ("THERE", "called", "lonely")]

"""The translation files: finished, alike in their places, up to date with the code, compiled, literals only."""

from __future__ import annotations

import ast
import re
import xml.etree.ElementTree as ElementTree
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTranslator
from speaking import speaking

from calibrator.desk import record_sentences, science_sentences
from calibrator.desk.counted import counted
from calibrator.places import resource
from calibrator.prints import words
from calibrator.records.errors import SENTENCES
from calibrator.records.plain import kind_word
from calibrator.records.tables import FACTS, NOUNS
from calibrator.science.powder import TYPICAL_PCT
from tests import translate

ROOT = Path(translate.ROOT)
DESK = sorted((ROOT / "calibrator" / "desk").rglob("*.py"))
CATALOGUES = ("desk_es", "prints_es", "qt_es")
SPEAKS = {"self.tr": 0, "translate": 1, "QCoreApplication.translate": 1}  # and which argument is the text
# The sentences of other rooms are marked as literals where these names are made, and said by variable here.
SAID_BY_VARIABLE = "refusals.py"
GUARDS = {"finite": 1, "positive": 1, "not_negative": 1, "between": 3}
REFUSALS = ("CannotCompute", "DoesNotFit", "CannotPrint")


def messages(name: str) -> Iterator[tuple[str, str, list[str], str | None]]:
    """Context, source, translations (several for a plural) and type of each message."""
    for context in ElementTree.parse(resource(f"translations/{name}.ts")).iter("context"):
        for message in context.iter("message"):
            told = message.find("translation")
            assert told is not None
            forms = [form.text or "" for form in told.iter("numerusform")] or [told.text or ""]
            yield context.findtext("name", ""), message.findtext("source", ""), forms, told.get("type")


def places(text: str) -> list[str]:
    return sorted(re.findall(r"{\w*}", text))


@pytest.mark.parametrize("name", [*CATALOGUES, "desk_en"])
def test_every_message_is_finished(name: str) -> None:
    assert [f"{context}: {source}" for context, source, forms, kind in messages(name) if kind or not all(forms)] == []


@pytest.mark.parametrize("name", [*CATALOGUES, "desk_en"])
def test_translations_have_the_same_places(name: str) -> None:
    assert [source for _, source, forms, _ in messages(name) for told in forms if places(told) != places(source)] == []


def test_no_figure_is_called_safe_where_it_is_meant_to_be_certain() -> None:
    """`Seguro` is both in Spanish: of a mix that calves drink it would say that it is not safe to feed."""
    told = [form for name in ("desk_es", "prints_es") for _, _, forms, _ in messages(name) for form in forms]
    told.append(resource("manual/es.md").read_text(encoding="utf-8"))
    of_a_person = ("para estar seguro",)
    for allowed in of_a_person:
        told = [text.replace(allowed, "") for text in told]
    assert [text[:200] for text in told if re.search(r"\b(in)?segur", text)] == []


def test_a_key_is_given_in_both_languages_or_in_none() -> None:
    def keys(text: str) -> int:
        return len(re.findall(r"&\w", text))

    assert [source for _, source, forms, _ in messages("desk_es") if keys(source) != keys(forms[0])] == []


@pytest.mark.parametrize("name", [*CATALOGUES, "desk_en"])
def test_the_compiled_file_says_what_the_text_file_says(name: str) -> None:
    translator = QTranslator()
    assert translator.load(str(resource(f"translations/{name}.qm")))
    for context, source, forms, _ in messages(name):
        if len(forms) == 1:
            assert translator.translate(context, source) == forms[0]
        else:
            assert [translator.translate(context, source, "", count) for count in (1, 2)] == forms


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_files_are_up_to_date_with_the_code(language: str, tmp_path: Path) -> None:
    kept = translate.TRANSLATIONS / f"desk_{language}.ts"
    fresh = tmp_path / kept.name
    fresh.write_bytes(kept.read_bytes())
    translate.gather(language, fresh)
    assert fresh.read_text("utf-8") == kept.read_text("utf-8"), "run python -m tests.translate"


def spoken_literals(path: Path) -> Iterator[tuple[int, ast.expr]]:
    """The line and the text of each call that is to be translated."""
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if not isinstance(node, ast.Call):
            continue
        called = ast.unparse(node.func)
        if called in SPEAKS:
            yield node.lineno, node.args[SPEAKS[called]]


@pytest.mark.parametrize("path", DESK, ids=lambda path: str(path.name))
def test_only_literals_are_translated(path: Path) -> None:
    """A variable or an f-string is never found by the gatherer, and stays English for ever."""
    if path.name == SAID_BY_VARIABLE:
        return
    odd = [line for line, said in spoken_literals(path) if not _literal(said)]
    assert odd == []


def test_the_gatherer_finds_every_literal() -> None:
    """One with a brace inside an f-string it passes over."""
    known = {source for _, source, _, _ in messages("desk_es")}
    said = {part.value for path in DESK for _, part in spoken_literals(path) if isinstance(part, ast.Constant)}
    assert said - known == set()


def _literal(said: ast.expr) -> bool:
    return isinstance(said, ast.Constant) and isinstance(said.value, str)


def test_no_function_is_called_tr_for_short() -> None:
    """`tr("Context", "text")` is read by the gatherer as the text "Context"."""
    found = [
        f"{path.name}: {node.args[0].value}"
        for path in DESK
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id == "tr"
        and isinstance(node.args[0], ast.Constant)
    ]
    assert found == []


def test_the_sentences_of_the_records_are_all_known() -> None:
    assert set(record_sentences.SENTENCES) == set(SENTENCES.values())


@pytest.mark.parametrize("kind", [kind_word(kind) for kind in (*NOUNS, *FACTS)])
def test_the_things_of_the_records_have_a_name(kind: str) -> None:
    known = {source for context, source, _, _ in messages("desk_es") if context == "Records"}
    assert record_sentences.kind_words(kind) in known


def test_the_sentences_of_science_and_prints_are_all_known() -> None:
    known = {*science_sentences.SENTENCES, *science_sentences.WHAT, *science_sentences.LIMITS}
    assert sorted(refusal_literals() - known) == []
    parts_of_a_label = {f"The {part} on the label" for part in TYPICAL_PCT}
    assert sorted(known - literals() - parts_of_a_label) == [], "nobody says it any more"


def literals() -> set[object]:
    """Every constant in the program, but for the list of the sentences itself."""
    files = set((ROOT / "calibrator").rglob("*.py")) - {Path(science_sentences.__file__)}
    nodes = (node for path in files for node in ast.walk(ast.parse(path.read_text("utf-8"))))
    return {node.value for node in nodes if isinstance(node, ast.Constant)}


def test_the_words_of_paper_are_all_printed() -> None:
    assert {source for _, source, _, _ in messages("prints_es")} <= literals()
    times: Counter[str] = Counter()
    for path in (ROOT / "calibrator").rglob("*.py"):
        times.update(re.findall(r"\w+", path.read_text("utf-8")))
    named = [name for name in vars(words) if name.isupper() and name != "QT_TRANSLATE_NOOP"]
    assert [name for name in named if times[name] < 2] == []


def refusal_literals() -> set[str]:
    """Every literal that stands in a refusal: its sentence, what it is about, its limits."""
    found: set[str] = set()
    for room in ("science", "prints", "desk"):
        for path in (ROOT / "calibrator" / room).rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text("utf-8"))):
                if isinstance(node, ast.Call):
                    found.update(_refused(node, room))
    return found


def _refused(node: ast.Call, room: str) -> Iterator[str]:
    name = node.func.id if isinstance(node.func, ast.Name) else ""
    if name in REFUSALS and node.args:
        parts = node.args[0].values if isinstance(node.args[0], ast.BoolOp) else node.args[:1]
    elif name in GUARDS and room == "science":
        parts = node.args[GUARDS[name] : GUARDS[name] + 2]
    else:
        return
    for part in parts:
        if isinstance(part, ast.JoinedStr) and name in REFUSALS:
            pytest.fail(f"a refusal built by an f-string cannot be translated: {ast.unparse(part)}")
        if isinstance(part, ast.Constant):
            yield str(part.value)


def test_counts_have_their_singular(spoken: None) -> None:
    assert counted.bags(1) == "1 bag"
    assert counted.bags(2) == "2 bags"
    assert counted.calves(1) == "1 calf"


@pytest.fixture
def spoken(qapp: object) -> Iterator[None]:
    with speaking("en"):
        yield

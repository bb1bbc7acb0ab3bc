"""Finding a place of the help by its words; accents and capitals do not matter."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence

from calibrator.values import dataclass

AROUND = 60  # signs told before the word that was found
LONGEST = 160
SHORTEST = 3  # a word that tells something


@dataclass(frozen=True)
class Topic:
    """A place of the help: the tab it is on, which one there, its title and its text."""

    tab: int
    place: int
    title: str
    text: str


def found(topics: Sequence[Topic], asked: str) -> list[Topic]:
    """The topics that have every word asked for; those with all of them in the title first."""
    words = plain(asked).split()
    if not words:
        return []
    hits = [topic for topic in topics if _has(f"{topic.title} {topic.text}", words)]
    return sorted(hits, key=lambda topic: not _has(topic.title, words))


def near(topics: Sequence[Topic], asked: str) -> list[Topic]:
    """The topics that have some of the words, those with most of them first: for when none has all."""
    words = [word for word in plain(asked).split() if len(word) >= SHORTEST]
    told = {topic: sum(_has(f"{topic.title} {topic.text}", [word]) for word in words) for topic in topics}
    hits = [topic for topic in topics if told[topic]]
    return sorted(hits, key=lambda topic: (-told[topic], -sum(_has(topic.title, [word]) for word in words)))


def excerpt(topic: Topic, asked: str) -> str:
    """The text around the first word asked for, with an ellipsis where it is cut."""
    text = " ".join(topic.text.split())
    places = [place for word in plain(asked).split() if (place := plain(text).find(_one(word))) >= 0]
    start = max(0, min(places, default=0) - AROUND)
    start = text.find(" ", start) + 1 if start else 0
    cut = text[start : start + LONGEST]
    return ("… " if start else "") + cut + (" …" if start + LONGEST < len(text) else "")


def plain(text: str) -> str:
    """Small letters without accents, one for each sign, so that places stay where they are."""
    return "".join((unicodedata.normalize("NFD", sign)[0].lower() or sign)[0] for sign in text)


def _has(text: str, words: Sequence[str]) -> bool:
    told = plain(text)
    return all(_one(word) in told for word in words)


def _one(word: str) -> str:
    """Of several the one: "groups" finds "group", in Spanish too."""
    return word.removesuffix("s") if len(word) > SHORTEST else word

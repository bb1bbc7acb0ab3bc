"""Why a text was not understood, in the person's language.

The English sentences are those of `calibrator.units.SENTENCES`, written out again because only literals are
found for translation; a test keeps the two alike.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.units import NotUnderstood


def sentence(problem: NotUnderstood) -> str:
    """One sentence that says what is wrong with a text and what to write instead."""
    return sentences()[problem.code].format(**problem.params)


def the_ways(problem: NotUnderstood) -> str:
    """The question in short, for a narrow field, where a number can be read in two ways; else blank."""
    ways = [problem.params[name] for name in ("whole", "point", "comma", "one", "other") if name in problem.params]
    if len(ways) != 2:
        return ""
    return QCoreApplication.translate("Units", "{one} or {other}?").format(one=ways[0], other=ways[1])


def sentences() -> dict[str, str]:
    """Every sentence by its code, with its braces, in the language of the program."""
    return {
        "empty": QCoreApplication.translate("Units", "Type a value, like {example}."),
        "too_long": QCoreApplication.translate(
            "Units",
            "That is too long for one value. Type it like {example}.",
        ),
        "hidden": QCoreApplication.translate(
            "Units",
            "There is a hidden character in it ({name}). Clear the field and type it like {example}.",
        ),
        "no_number": QCoreApplication.translate("Units", "There is no number in it. Type it like {example}."),
        "unexpected": QCoreApplication.translate(
            "Units",
            "“{part}” cannot stand there. Type it like {example}.",
        ),
        "exponent": QCoreApplication.translate("Units", "Write the number out in digits, like {example}."),
        "separators": QCoreApplication.translate(
            "Units",
            "“{part}” has more than one decimal sign. Write it like {example}.",
        ),
        "unfinished": QCoreApplication.translate(
            "Units",
            "Digits are missing after “{part}”. Type it like {example}.",
        ),
        "comma_thousands": QCoreApplication.translate(
            "Units",
            "“{part}” can be {whole} or {point}. Write the one that is meant.",
        ),
        "point_thousands": QCoreApplication.translate(
            "Units",
            "“{part}” can be {whole} or {comma}. Write the one that is meant.",
        ),
        "numbers_in_row": QCoreApplication.translate(
            "Units",
            "“{part}” has two numbers in a row. Write one number, or a unit after each, like {example}.",
        ),
        "bad_fraction": QCoreApplication.translate(
            "Units",
            "“{part}” is not a fraction that can be used. Halves to sixty-fourths can, like 1/4.",
        ),
        "improper": QCoreApplication.translate(
            "Units",
            "“{part}” is not less than one. Leave a space between whole number and fraction, like 10 1/4.",
        ),
        "improper_meant": QCoreApplication.translate("Units", "“{part}” is not less than one. Was {meant} meant?"),
        "improper_either": QCoreApplication.translate(
            "Units",
            "“{part}” can be {one} or {other}. Write the one that is meant.",
        ),
        "unit_missing": QCoreApplication.translate(
            "Units",
            "Write the unit after “{part}” too, like {example}.",
        ),
        "unit_needed": QCoreApplication.translate(
            "Units",
            "Its unit is missing: write {part} {unit} or {part} {other}.",
        ),
        "unit_unknown": QCoreApplication.translate(
            "Units",
            "The unit “{unit}” is not known here. Type it like {example}.",
        ),
        "is_mass": QCoreApplication.translate(
            "Units",
            "{unit} is a weight, and something else belongs here. Type it like {example}.",
        ),
        "is_volume": QCoreApplication.translate(
            "Units",
            "{unit} is a volume, and something else belongs here. Type it like {example}.",
        ),
        "is_length": QCoreApplication.translate(
            "Units",
            "{unit} is a length, and something else belongs here. Type it like {example}.",
        ),
        "is_temperature": QCoreApplication.translate(
            "Units",
            "{unit} is a temperature, and something else belongs here. Type it like {example}.",
        ),
        "is_percent": QCoreApplication.translate(
            "Units",
            "{unit} is a share, and something else belongs here. Type it like {example}.",
        ),
        "oz_in_volume": QCoreApplication.translate("Units", "oz is a weight. For a volume write fl oz."),
        "fl_oz_in_mass": QCoreApplication.translate("Units", "fl oz is a volume. For a weight write oz."),
        "which_cup": QCoreApplication.translate(
            "Units",
            "Three cups are in use. Write US cup (237 mL), label cup (240 mL) or metric cup (250 mL).",
        ),
        "which_ton": QCoreApplication.translate(
            "Units",
            "Several tons are in use. Write the weight in lb or kg.",
        ),
        "grain": QCoreApplication.translate("Units", "gr means grain. For grams write g."),
        "foot_mark": QCoreApplication.translate("Units", "Write the unit as ft or in, like {example}."),
        "order": QCoreApplication.translate(
            "Units",
            "Write the larger unit first and each unit once, like {example}.",
        ),
        "carry": QCoreApplication.translate("Units", "“{part}” is 1 {unit} or more. Check both numbers."),
        "whole_first": QCoreApplication.translate(
            "Units",
            "Only a whole number can stand before a second unit, like {example}.",
        ),
        "one_value": QCoreApplication.translate("Units", "Type one value, like {example}."),
        "not_whole": QCoreApplication.translate("Units", "Type a whole number, like {example}."),
        "negative": QCoreApplication.translate(
            "Units",
            "“{part}” is below zero, which cannot be. Type it like {example}.",
        ),
        "zero": QCoreApplication.translate("Units", "Zero cannot be right here. Type it like {example}."),
        "too_little": QCoreApplication.translate(
            "Units",
            "Too little: at least {limit}.",
        ),
        "too_little_meant": QCoreApplication.translate("Units", "Too little: at least {limit}. Was {meant} meant?"),
        "too_much": QCoreApplication.translate(
            "Units",
            "Too much: at most {limit}.",
        ),
        "too_much_meant": QCoreApplication.translate("Units", "Too much: at most {limit}. Was {meant} meant?"),
    }

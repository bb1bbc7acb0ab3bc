"""What the rooms below refuse, said in the language of the screen.

Their errors carry an English sentence with its places open and what stands in them. The sentences are written
out for translation in `record_sentences` and `science_sentences`; a test keeps both complete.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import record_sentences, science_sentences
from calibrator.records import EditedMeanwhile, ImportRefused, RecordsError
from calibrator.records.errors import SENTENCES


def in_words(error: Exception) -> str:
    """The sentence of an error, in the language of the screen; of one without a sentence its own text."""
    params = dict(getattr(error, "params", {}))
    if isinstance(error, EditedMeanwhile) and getattr(error.newest, "retired_on", None) is not None:
        told = QCoreApplication.translate(
            "Records",
            "{name} was retired meanwhile on another page or computer. Look at it first, then decide whether to go on.",
        )
        return told.format(name=error.newest.name)
    if isinstance(error, RecordsError):
        said = QCoreApplication.translate(record_sentences.CONTEXT, SENTENCES[error.code])
        if "kind" in params:
            params["kind"] = record_sentences.kind_words(params["kind"])
        if isinstance(error, ImportRefused) and isinstance(error.__cause__, RecordsError):
            params["fault"] = in_words(error.__cause__)
        if params.get("fault") in record_sentences.FAULTS:
            params["fault"] = QCoreApplication.translate(record_sentences.CONTEXT, params["fault"])
        return said.format(**params)
    said = QCoreApplication.translate(science_sentences.CONTEXT, getattr(error, "sentence", str(error)))
    filled = {name: QCoreApplication.translate(science_sentences.CONTEXT, told) for name, told in params.items()}
    return said.format(**filled) if filled else said


def written_out(context: str, literal: str) -> str:
    """A phrase that is written out for translation elsewhere, in the language of the screen."""
    return QCoreApplication.translate(context, literal)

"""What the columns of a farm's own table mean: found by their headings, in English and Spanish, with the unit there."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from enum import StrEnum

from calibrator.records.foreign.table import ForeignTable, Value
from calibrator.units import Kind
from calibrator.units.registry import kind_of, symbol_of


class Meaning(StrEnum):
    """What a column tells; NOTHING is not brought in."""

    NOTHING = ""
    LOT = "lot"
    PRODUCT = "product"
    SUPPLIER = "supplier"
    PLANT = "plant_code"
    ARRIVED = "arrived_on"
    MADE = "made_on"
    FED_FROM = "fed_from"
    FINISHED = "finished_on"
    PACKAGE = "package"
    PACKAGES = "package_count"
    PACKAGE_MASS = "package_mass_g"
    PRICE = "price_per_package"
    PROTEIN = "protein_pct"
    FAT = "fat_pct"
    FIBRE = "fibre_pct"
    ASH = "ash_pct"
    MOISTURE = "moisture_pct"
    MEDICATED = "medicated"
    AGGLOMERATED = "agglomerated"
    NOTE = "note"
    WHEN = "when"
    CLOCK = "clock"
    SCOOP = "scoop"
    BAG = "bag"
    WAY = "way"
    NET = "net"
    GROSS = "gross"
    TARE = "tare"
    TYPED = "typed"
    SCOOPFULS = "scoopfuls"
    LINE = "line"
    BY = "by"
    STRUCK = "struck"
    SESSION = "session"


DAYS = frozenset((Meaning.ARRIVED, Meaning.MADE, Meaning.FED_FROM, Meaning.FINISHED, Meaning.WHEN))
MASSES = frozenset((Meaning.PACKAGE_MASS, Meaning.NET, Meaning.GROSS, Meaning.TARE))
PERCENTS = frozenset((Meaning.PROTEIN, Meaning.FAT, Meaning.FIBRE, Meaning.ASH, Meaning.MOISTURE))
COUNTS = frozenset((Meaning.PACKAGES, Meaning.BAG, Meaning.SCOOPFULS))
NUMBERS = MASSES | PERCENTS | COUNTS | {Meaning.PRICE, Meaning.LINE}
OF_FILLS = frozenset(tuple(Meaning)[tuple(Meaning).index(Meaning.WHEN) :])
"""What belongs to a weighing, the rest to the lot."""

_WORDS: dict[Meaning, str] = {
    Meaning.LOT: "lot|lot number|lot no|lot nr|lot #|lot id|batch number|lote|numero de lote|no de lote|n de lote"
    "|lote n|lote no|lote #",
    Meaning.PRODUCT: "product|product name|brand|powder|milk replacer|replacer|producto|marca|polvo|sustituto"
    "|sustituto de leche",
    Meaning.SUPPLIER: "supplier|vendor|from|mill|dealer|proveedor|distribuidor",
    Meaning.PLANT: "plant code|plant|line code|planta|codigo de planta|clave de planta",
    Meaning.ARRIVED: "arrived on|arrived|arrival|received|date received|delivered|delivery date|delivered on"
    "|received on|date rec d|rec d|date in|llegada|llego|llego el|fecha de llegada|recibido|entrega|entregado"
    "|fecha de entrega|recibido el",
    Meaning.MADE: "made on|made|manufactured|manufacture date|production date|produced|mfg date|fabricado|hecho"
    "|fecha de fabricacion|elaborado",
    Meaning.FED_FROM: "fed from|fed since|started feeding|first fed|se da desde|se usa desde|en uso desde",
    Meaning.FINISHED: "finished on|finished|used up|last fed|empty on|terminado|se acabo|acabado",
    Meaning.PACKAGE: "kind of package|package|packaging|tipo de envase|envase",
    Meaning.PACKAGES: "packages|bags|number of bags|bag count|no of bags|how many bags|how many|quantity|qty|# bags"
    "|# of bags|sacos|numero de sacos|costales|numero de costales|cuantos costales|cantidad|cuantos sacos|bolsas"
    "|totes",
    Meaning.PACKAGE_MASS: "weight of a package|bag weight|weight of bag|weight of each|bag size|bag wt"
    "|weight per bag|wt per bag|lb per bag|lbs per bag|lb bag|lbs bag|kg per bag|kg bag|peso del saco|peso de saco"
    "|peso de cada uno|peso por saco|peso del costal|peso de un costal|peso por costal|peso c u|kg por saco"
    "|kg por costal|kg costal|kg saco",
    Meaning.PRICE: "price of a package|price|price per bag|bag price|cost|cost per bag|unit price|price each"
    "|cost each|precio|precio por saco|precio por costal|precio de cada uno|costo|precio unitario|precio c u",
    Meaning.PROTEIN: "protein|crude protein|proteina|proteina cruda",
    Meaning.FAT: "fat|crude fat|grasa|grasa cruda",
    Meaning.FIBRE: "fibre|fiber|crude fiber|fibra|crude fibre|fibra cruda",
    Meaning.ASH: "ash|ceniza|cenizas",
    Meaning.MOISTURE: "moisture|humedad",
    Meaning.MEDICATED: "medicated|medicado",
    Meaning.AGGLOMERATED: "agglomerated|instantized|aglomerado|instantaneo",
    Meaning.NOTE: "note|notes|remark|remarks|comment|comments|nota|notas|observacion|observaciones|comentario",
    Meaning.WHEN: "at|when|date|day|weighed|weighed on|date weighed|weigh date|weighing date|fecha|dia|cuando|pesado"
    "|fecha de pesado|pesado el",
    Meaning.CLOCK: "time|time of day|hour|hora",
    Meaning.SCOOP: "scoop|scoop name|cup|which scoop|medida|cucharon|taza|cuchara",
    Meaning.BAG: "bag|bag number|bag no|bag #|costal|numero de costal|no de costal|costal n|costal no|costal #|saco"
    "|numero de saco|no de saco|bolsa",
    Meaning.WAY: "filled|how filled|fill type|way|llenado|como se lleno|tipo de llenado|como",
    Meaning.NET: "weight|net weight|net|fill weight|powder weight|powder|scoop weight|weight of powder|fill|peso|wt"
    "|net wt|fill wt|scoop wt|weight of scoop|weight of scoopful|peso neto|neto|peso del polvo|peso medida"
    "|peso de medida|peso de la medida|peso de la cucharada|grams|gramos|ounces|onzas",
    Meaning.GROSS: "gross|gross weight|filled scoop|weight of filled scoop|full scoop|scoop and powder|peso bruto"
    "|bruto|medida llena|cucharon lleno|peso del cucharon lleno",
    Meaning.TARE: "tare|empty scoop|weight of empty scoop|empty weight|tara|medida vacia|cucharon vacio"
    "|peso del cucharon vacio",
    Meaning.TYPED: "as typed|tal como se escribio",
    Meaning.SCOOPFULS: "scoopfuls|number of scoops|scoops|numero de medidas|medidas|cucharadas|cucharones",
    Meaning.LINE: "line below the rim|line|mark|linea bajo el borde|linea|raya",
    Meaning.BY: "by|who|weighed by|person|initials|feeder|name|quien|por|pesado por|persona|iniciales|nombre",
    Meaning.STRUCK: "struck out because|struck out|left out because|tachado porque|no cuenta porque",
    Meaning.SESSION: "weigh in|weighing|session|pesada",
}
_BY_HEADING = {words: meaning for meaning, told in reversed(_WORDS.items()) for words in told.split("|")}
_MOST_ABOVE = 30
_BRACKET = re.compile(r"[(\[]([^()\[\]]{1,12})[)\]]")


def plain(text: str) -> str:
    """A heading without accents, brackets, signs and capitals."""
    bare = unicodedata.normalize("NFKD", _BRACKET.sub(" ", text).casefold().replace("º", ""))
    letters = "".join(sign for sign in bare if not unicodedata.combining(sign))
    return " ".join(re.sub(r"[^\w#]+", " ", letters.replace("_", " ")).split())


def unit_of(heading: str, kind: Kind = Kind.MASS, *, gr_is_gram: bool = False) -> str:
    """The unit of a kind that a heading tells, in brackets, as its last word or its first; blank for none, and for gr
    where that may be grains.
    """
    words = [word for word in re.split(r"[\s,;:/.]+", _BRACKET.sub(" ", heading)) if word]
    first = [one for one in words[:1] if one.isalpha()]  # "# bags" is no weight in pounds
    told = [*_BRACKET.findall(heading), *(words[-1:] if len(words) > 1 else []), *first]
    found = (symbol_of(one, gr_is_gram=gr_is_gram) for one in told)
    return next((symbol for symbol in found if symbol is not None and kind_of(symbol) is kind), "")


def meaning_of(heading: str) -> Meaning:
    """What a heading means by its words; NOTHING where they are not known."""
    words = plain(heading)
    without_unit = " ".join(
        word for word in words.split() if symbol_of(word, gr_is_gram=True) is None or word in ("c", "m", "#")
    )
    without_number = re.sub(r"\s*\d+$", "", without_unit)
    without_in = re.sub(r"\s+(in|en)$", "", without_unit)  # weight in grams
    for told in (words, without_unit, without_number, without_in):
        if told in _BY_HEADING:
            return _BY_HEADING[told]
    return Meaning.NOTHING


def heading_row(table: ForeignTable) -> int | None:
    """The row of the headings, from 0: that in which most words are known; None where none of the first tells any."""
    known = [_known(row) for row in table.rows[:_MOST_ABOVE]]
    best = max(known, default=0)
    return known.index(best) if best else None


def _known(row: Sequence[Value]) -> int:
    return len({found for cell in row if isinstance(cell, str) and (found := meaning_of(cell)) is not Meaning.NOTHING})


def meanings_of(headings: Sequence[str]) -> tuple[Meaning, ...]:
    """A meaning for each column; only weights can stand in several columns, another's second is left out."""
    taken: set[Meaning] = set()
    found = []
    for heading in headings:
        meaning = meaning_of(heading)
        if meaning in taken and meaning is not Meaning.NET:
            meaning = Meaning.NOTHING
        taken.add(meaning)
        found.append(meaning)
    return tuple(found)


def headings_of(table: ForeignTable, row: int | None) -> tuple[str, ...]:
    """The words over each column, blank where there are none."""
    told = table.rows[row] if row is not None and row < len(table.rows) else ()
    texts = [str(cell).strip() if cell is not None else "" for cell in told]
    return tuple(texts + [""] * (table.columns - len(texts)))


def column_name(place: int) -> str:
    """A column as spreadsheets call it: A, B … Z, AA."""
    name, rest = "", place + 1
    while rest:
        rest, letter = divmod(rest - 1, 26)
        name = chr(65 + letter) + name
    return name

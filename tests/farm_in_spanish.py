"""The sample farm with Spanish names, for the pictures of the Spanish screens."""

from __future__ import annotations

import json
import re
from pathlib import Path

from calibrator.records import Records, import_season
from calibrator.records.paths import sample_lots_folder

NAMES = {
    "Thistledown Corner (invented)": "Rincón del Cardo (inventado)",
    "bench scale": "báscula de mesa",
    "red cup": "taza roja",
    "white cup": "taza blanca",
    "pail": "cubeta",
    "mixing cart": "carro mezclador",
    "all calves": "todas las becerras",
    "hutches": "casetas",
    "group pens": "corrales de grupo",
    "refractometer": "refractómetro",
    "dial thermometer": "termómetro de carátula",
    "22/20 milk replacer": "sustituto de leche 22/20",
    "22/20 milk replacer, agglomerated": "sustituto de leche 22/20, aglomerado",
    "Marrowfield Feeds (invented)": "Alimentos El Surco (inventado)",
    "Two bags torn, fed first.": "Dos costales rotos; se usaron primero.",
    "Humid week, powder clings to the scoop. Stirred each bag twice.": "Semana húmeda: el polvo se pega a la medida. "
    "Cada costal se revolvió dos veces.",
    "First agglomerated lot. Looks coarser and pours freely.": "Primer lote aglomerado. Se ve más grueso y corre bien.",
    "red handle": "mango rojo",
    "notch in the handle": "muesca en el mango",
    "cracked at the rim": "rajada en el borde",
    "calves counted": "se contaron las becerras",
    "bags counted": "se contaron los costales",
    "bag not stirred up, caked lump in the scoop": "costal sin revolver, un terrón en la medida",
    "before we practised": "antes de practicar",
    "after we practised shaking it level": "después de practicar cómo emparejarla",
}


def spanish_records(folder: str | Path) -> Records:
    """Fresh records in a folder, filled with the invented season under Spanish names."""
    text = (sample_lots_folder() / "season.json").read_text("utf-8")
    for english, spanish in NAMES.items():
        told = json.dumps(spanish, ensure_ascii=False)
        text = re.sub(rf'(?<!"kind"): {re.escape(json.dumps(english))}', f": {told}", text)  # a kind is no name
    season = Path(folder) / "season.json"
    season.write_text(text, "utf-8")
    records = Records.open(str(Path(folder) / "demo.sqlite"))
    import_season(records, season)
    return records

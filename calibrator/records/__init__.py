"""What is kept: tables, migrations, one repository, history.

Belongs here: everything that touches a database. Never here: Qt, formulas, units. Facts are added, never
overwritten: a correction is a new revision that names the one it replaces, who and why.
"""

from calibrator.records.backup import Backup
from calibrator.records.bringing import brought_in
from calibrator.records.errors import (
    DiskFull,
    EditedMeanwhile,
    ForeignRefused,
    ImportRefused,
    NotAllowed,
    RecordsDamaged,
    RecordsError,
    RecordsLocked,
    RecordsReadOnly,
    RecordsTooNew,
    RecordsUnreachable,
)
from calibrator.records.importing import Imported, demo_records, import_season
from calibrator.records.integrity import Fault, Finding
from calibrator.records.nouns import Change
from calibrator.records.paths import default_url, sample_lots_folder
from calibrator.records.place import is_file, name_of
from calibrator.records.repository import ELSEWHERE, Records
from calibrator.records.rescue import backups_of, restore_backup
from calibrator.records.season import (
    bag_sums,
    bag_sums_of,
    count_sign_offs,
    every_spot_fill,
    lot_points,
    season_lots,
)

__all__ = [
    "ELSEWHERE",
    "Backup",
    "Change",
    "DiskFull",
    "EditedMeanwhile",
    "Fault",
    "Finding",
    "ForeignRefused",
    "ImportRefused",
    "Imported",
    "NotAllowed",
    "Records",
    "RecordsDamaged",
    "RecordsError",
    "RecordsLocked",
    "RecordsReadOnly",
    "RecordsTooNew",
    "RecordsUnreachable",
    "backups_of",
    "bag_sums",
    "bag_sums_of",
    "brought_in",
    "count_sign_offs",
    "default_url",
    "demo_records",
    "every_spot_fill",
    "import_season",
    "is_file",
    "lot_points",
    "name_of",
    "restore_backup",
    "sample_lots_folder",
    "season_lots",
]

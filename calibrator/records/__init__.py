"""What is kept: tables, migrations, one repository, history.

Belongs here: everything that touches a database. Never here: Qt, formulas, units. Facts are added, never
overwritten: a correction is a new revision that names the one it replaces, who and why.
"""

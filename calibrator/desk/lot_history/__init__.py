"""All that was kept of a lot in one list: the words of an entry, the table, the dialog."""

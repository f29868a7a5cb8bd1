"""Holds estimates and judgements against the open tables they were not fitted to.

Run as ``python -m tapewise_core.statistics.proving FOLDER``; takes about a minute, and is no
part of the program or of the quick tests.
"""

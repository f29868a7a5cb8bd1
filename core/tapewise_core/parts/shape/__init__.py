"""The shape of a body's garment in plain millimetres: levels, seams, armholes, sleeves, bands.

Nothing here knows a body, a style or a draft. The frame is the drafting plane's: the nape at
(0, 0), x outwards from the fold, y down. What is held back is said in a ``Told`` with its reason.
"""

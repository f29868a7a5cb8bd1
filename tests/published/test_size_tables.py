"""Published size tables pass through the checks on measures without a false alarm."""

import pytest

from tapewise_core.measures.plausible import contradictions, out_of_range

SIZES = ["00", "0", "2", "4", "6", "8", "10", "12", "14", "16", "18", "20"]

# ASTM D5585-11e1, US misses, curvy; cm.
ASTM = {
    "bust": (79.1, 80.6, 83.8, 86.7, 89.5, 92.1, 94.6, 98.4, 102.6, 107.0, 111.8, 116.8),
    "waist": (60.6, 62.5, 64.5, 66.4, 68.6, 71.1, 73.7, 78.1, 82.5, 87.6, 93.3, 99.1),
    "under_bust": (65.4, 67.3, 69.2, 71.1, 73.7, 76.2, 78.7, 82.5, 86.4, 90.8, 95.6, 100.6),
    "neck": (33.7, 34.3, 34.9, 35.6, 36.2, 37.1, 37.8, 38.4, 39.4, 40.0, 40.6, 41.6),
}

# EN 13402-3, women's bust limits; the waist and hip rows beside them are from memory.
EN_BUST = (74, 78, 82, 86, 90, 94, 98, 102, 107, 113, 119, 125, 131)
EN_WAIST = (60, 64, 68, 72, 76, 80, 84, 88, 94, 100, 106, 112, 118)
EN_HIP = (84, 88, 92, 96, 100, 104, 108, 112, 117, 122, 127, 132, 137)


@pytest.mark.parametrize("size", SIZES)
def test_the_us_misses_table_raises_no_finding(size):
    """[astm-d5585]: every size's girths are plausible and agree with each other."""
    at = SIZES.index(size)
    values = {key: row[at] for key, row in ASTM.items()}
    values["head"] = 54.0 + (57.1 - 54.0) * at / (len(SIZES) - 1)  # the table's two ends
    assert out_of_range(values) == ()
    assert contradictions(values) == ()


@pytest.mark.parametrize("at", range(len(EN_BUST)))
def test_the_european_limits_raise_no_finding(at):
    """EN 13402-3: from bust 74 to bust 131."""
    values = {"bust": float(EN_BUST[at]), "waist": float(EN_WAIST[at]), "hip": float(EN_HIP[at])}
    assert out_of_range(values) == ()
    assert contradictions(values) == ()


# Least and greatest among adults; ANSUR I (US Army 1988), ANSUR II (2012), NHANES 2017-2020; cm.
EXTREMES = {
    "height": (131.1, 204.2),
    "bust": (69.5, 146.9),
    "high_bust": (75.3, 129.8),
    "under_bust": (64.0, 121.1),
    "waist": (56.4, 187.5),
    "hip": (73.7, 187.5),
    "head": (50.0, 63.5),
    "neck": (29.8, 54.5),
    "upper_arm": (17.9, 64.5),
    "wrist": (12.4, 21.6),
    "armscye_depth": (14.2, 28.4),
    "back_waist_length": (28.3, 59.8),
    "hip_depth": (5.0, 30.3),
    "shoulder_length": (10.7, 18.5),
    "shoulder_drop": (2.2, 11.9),
    "across_back": (26.6, 56.2),
    "arm_length": (41.0, 74.5),
    "neck_to_bust_point": (20.2, 35.4),
    "bust_span": (12.8, 28.5),
    "waist_to_knee": (42.6, 72.9),
    "waist_to_floor": (80.2, 134.8),
    "nape_to_floor": (118.4, 177.6),
}


@pytest.mark.parametrize("key", EXTREMES)
def test_no_adult_of_three_open_tables_is_out_of_range(key):
    """Least and greatest of [ansur1], [ansur2] and [nhanes] pass, and a twentieth beyond."""
    least, greatest = EXTREMES[key]
    for value in (least * 0.95, least, greatest, greatest * 1.05):
        assert out_of_range({key: value}) == ()

"""What is worked out from a symmetric positive definite matrix, such as a covariance.

Both halves of such a matrix are alike, so each number is worked out once, and every sum runs along
two lists.
"""

from __future__ import annotations

import math
from operator import mul

Row = list[float]


def root(matrix: list[Row]) -> list[Row]:
    """Return the lower triangular root (Cholesky), row by row."""
    found: list[Row] = []
    for i, line in enumerate(matrix):
        row: Row = []
        for j, other in enumerate(found):
            row.append((line[j] - sum(map(mul, row, other))) / other[j])
        row.append(math.sqrt(max(line[i] - sum(map(mul, row, row)), 0.0)))
        found.append(row)
    return found


def inverse(matrix: list[Row]) -> list[Row]:
    """Return the inverse, by the columns of the root's own inverse."""
    columns: list[Row] = []
    for row in root(matrix):
        scale = 1 / row[-1]
        for j, column in enumerate(columns):
            column.append(-scale * sum(map(mul, row[j:], column)))
        columns.append([scale])
    return _squared(columns)


def _squared(columns: list[Row]) -> list[Row]:
    """A lower triangle, by its columns from the diagonal down, times itself turned over."""
    size = len(columns)
    full = [[0.0] * size for _ in columns]
    for i, column in enumerate(columns):
        for j in range(i, size):
            full[i][j] = full[j][i] = sum(map(mul, column[j - i :], columns[j]))
    return full

"""Tables read back by the grammar of RFC 4180, and cells that a spreadsheet would run."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.measures.csv_writing import csv_text

# RFC 4180, section 2: a field is quoted, with quotes doubled, or holds no comma, quote or line break.
FIELD = re.compile(r'"((?:[^"]|"")*)"|([^",\r\n]*)')
CELLS = st.one_of(
    st.text(st.characters(exclude_categories=["Cs"]), max_size=12),
    st.sampled_from(['a"b', "a,b", "a\r\nb", "", "=1+1", "-2"]),
)


def read(text):
    """Rows of a file that is as RFC 4180 says; fails where it is not."""
    rows, row, at = [], [], 0
    while at < len(text):
        field = FIELD.match(text, at)
        quoted, plain = field.groups()
        row.append(quoted.replace('""', '"') if quoted is not None else plain)
        at = field.end()
        if text.startswith("\r\n", at):
            rows.append(row)
            row, at = [], at + 2
        else:
            assert text[at] == ","
            at += 1
            if text.startswith("\r\n", at):
                continue
    assert row == []
    return rows


@given(st.lists(st.lists(CELLS, min_size=2, max_size=2), max_size=5))
@settings(max_examples=60)
def test_every_table_follows_the_grammar_and_comes_back(table):
    came = read(csv_text(table))
    assert [[c.removeprefix("'") for c in row] for row in came] == [
        [c.removeprefix("'") for c in row] for row in table
    ]


@pytest.mark.parametrize(
    "text", ["=HYPERLINK(1)", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠A"]
)  # fmt: skip
def test_what_a_spreadsheet_would_run_is_text(text):
    """The characters OWASP names under "CSV injection"."""
    assert read(csv_text([["a", text]])) == [["a", f"'{text}"]]


def test_numbers_stay_numbers_and_nothing_is_empty():
    assert csv_text([[-1.5, 3, None, "x"]]) == "-1.5,3,,x\r\n"

"""Published pairs against the engine: no gain may turn into a clash, and no more of them may be missed."""

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.report import Verdict
from tests.oracles.pairs import LAYOUTS, TABLE, as_tried, between, by_turns, design, misses, pairs

# Where the engine stands, and may not fall behind. An addition between rows of a full stand is closer than
# most of the trials, which were in rows by turns or thinner; none with a gain clashes even so. No pair on
# record fails outright; those that only compete lose a quarter at most.
CLASHES_BETWEEN, SILENT_BETWEEN = 0, 9


def test_every_crop_of_the_pairs_is_known():
    assert len(pairs()) >= 60
    for pair in pairs():
        assert catalogue().resolve(pair.one)
        assert catalogue().resolve(pair.two)


@pytest.mark.parametrize("pair", [p for p in pairs() if p.gains], ids=lambda p: f"{p.one}-{p.two}")
def test_a_pair_that_gained_in_trials_does_not_clash_in_rows_by_turns(pair):
    outcome = by_turns(pair)
    assert outcome.verdict < Verdict.CLASHES, outcome


def test_no_pair_with_a_gain_clashes_as_it_was_tried():
    """Additive and replacement series of Paut et al. 2024."""
    clashing, _ = misses(as_tried)
    assert clashing == []
    assert sum(design(p) == "additive" for p in pairs()) >= 5
    assert sum(design(p) == "replacement" for p in pairs()) >= 10


def test_no_more_is_missed_between_the_rows_than_before():
    clashing, silent = misses(between)
    assert len(clashing) <= CLASHES_BETWEEN, clashing
    assert len(silent) <= SILENT_BETWEEN, silent


def test_squash_between_maize_strains_as_it_failed_in_eighteen_trials():
    """LER 0.90 (0.69–1.53): Momirović 2015, Tembakazi Silwana 2002 in Paut et al. 2024."""
    (pair,) = [p for p in pairs() if (p.one, p.two) == ("sweetcorn", "pumpkin")]
    assert "same roots" in between(pair).codes


def test_the_table_lists_every_pair_and_every_miss():
    """Written anew by ``python -m tests.oracles.pairs``."""
    text = TABLE.read_text(encoding="utf-8")
    for pair in pairs():
        assert f"| {pair.one} – {pair.two} |" in text
    told = text[text.index("Misses, by turns") :]
    for _, layout in LAYOUTS:
        for pair in (p for some in misses(layout) for p in some):
            assert f"{pair.one} – {pair.two}" in told

"""Sentences about a bed: the numbers in them are those of the published indices, computed by hand."""

from datetime import date

import numpy as np

from gardencanvas.fit.cover_share import CoverShare
from gardencanvas.fit.mixing import BedMixing
from gardencanvas.season.course import Weeks
from gardencanvas.words.bed_facts import cover_words, mixing_words


def test_a_checkerboard_reads_as_most_neighbours_differ():
    """6 × 6 checkerboard of two families: mixing index 1, two effective kinds (arithmetic)."""
    mixing = BedMixing({"A": 0.5, "B": 0.5}, {"A": 1.0, "B": 1.0}, 1.0, 2.0, 60, 60)
    assert mixing_words(mixing) == "as of 2.0 families, mixed 1.00: most neighbours differ"


def test_one_family_and_none_are_said_plainly():
    assert mixing_words(BedMixing({"A": 1.0}, {"A": None}, None, 1.0, 10, 0)) == "one family only"
    assert mixing_words(BedMixing({}, {}, None, 0.0, 0, 0)) == "nothing grows in it"


def test_cover_tells_mean_most_and_the_weeks_above_half():
    weeks = Weeks(date(2027, 1, 1), 52)
    covered = np.zeros(52)
    covered[20:30] = 0.6
    covered[25] = 0.8
    cover = CoverShare(weeks, covered, covered)
    said = cover_words(cover)
    assert "most 80" in said
    assert "more than half from 21 May to 23 July" in said
    assert cover_words(CoverShare(weeks, covered * 0, covered * 0)) == "no leaves this season"

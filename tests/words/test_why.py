"""Every code of a finding says why, with its limit and its source."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import thresholds
from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import Finding, Kind, Verdict
from gardencanvas.words.why import WHY, why


def found(code, source="common-practice"):
    day = date(2027, 5, 1)
    return Finding(
        "x", Kind.TIMING, Verdict.STRAINS, ("a",), day, day, code, {}, source, (0.0, 0.0), np.array([0])
    )


def test_no_code_is_without_a_reason_and_no_reason_without_a_code():
    assert set(WHY) == {code.value for code in Code}


@pytest.mark.parametrize("code", list(Code))
def test_a_reason_is_one_paragraph_and_cites_the_findings_source(code):
    said = why(found(code.value, "gerwitz-page"), catalogue())
    assert "\n" not in said
    assert said.endswith("Gerwitz, A., Page, E. R.: An empirical mathematical model to describe plant root "
                         "systems (1974).")  # fmt: skip
    assert 80 < len(said) < 1200


@pytest.mark.parametrize(
    ("code", "limit"),
    [
        ("crowded", thresholds.KEPT_STRAINS),
        ("same roots", thresholds.ROOTS_STRAINED),
        ("frost to come", thresholds.FROST_CLASHES),
        ("seldom ripe", thresholds.RIPENS_STRAINS),
    ],
)
def test_a_reason_names_the_limit_the_engine_judges_by(code, limit):
    assert f"{100 * limit:.0f}\u2009%" in why(found(code))

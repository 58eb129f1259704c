"""Ratios and yields against published trials and parameters."""

import csv

import numpy as np
import pytest
from scipy.optimize import curve_fit
from scipy.stats import linregress

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.density import held_back
from gardencanvas.fit.thresholds import HELD_BACK_HIGH, HELD_BACK_LOW
from gardencanvas.measures.yields.density import relative_yield
from gardencanvas.measures.yields.ratios import apart_in_time, ater, competitive_ratio, ler
from tests.oracles.oracle_rows import DATA, expected


def _published():
    with (DATA / "intercrop_yields.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@pytest.mark.parametrize("row", _published(), ids=lambda r: r["original_paper"].split(",")[0])
def test_published_ratios_come_out_of_published_yields(row):
    """One treatment of each of 34 articles in Paut et al. 2024; ratios are printed to three digits."""
    parts = [float(row[f"yield_inter_{x}"]) / float(row[f"yield_sole_{x}"]) for x in "ab"]
    for part, x in zip(parts, "ab", strict=True):
        if row[f"ler_{x}_published"]:  # some papers print only the total; Schultz rounds yields
            assert part == pytest.approx(float(row[f"ler_{x}_published"]), abs=0.05)
    assert float(ler(parts)) == pytest.approx(float(row["ler_total_published"]), abs=0.02)


def test_sorghum_and_cowpea_of_petersen():
    """Four row ratios in four blocks, sole sorghum 3585 and cowpea 1740 kg/ha (Petersen 1994, in agridat).

    The means are computed from the plot yields independently of the program.
    """
    lines = (DATA / "petersen_sorghum_cowpea.txt").read_text(encoding="utf-8").splitlines()[1:]
    rows = [line.replace('"', "").split("\t") for line in lines]
    mixed = [r for r in rows if r[1] != "0" and r[2] != "0"]
    means = {}
    for rows_of_sorghum in "1234":
        some = [r for r in mixed if r[1] == rows_of_sorghum]
        parts = [[float(r[3]) / 3585.0, float(r[4]) / 1740.0] for r in some]
        means[rows_of_sorghum] = float(ler(parts).mean())
    assert means == pytest.approx({"1": 1.163951, "2": 1.462094, "3": 1.337673, "4": 1.149171}, abs=1e-5)


def test_ratios_of_the_worked_example():
    relative = [3.0 / 5.0, 1.1 / 2.0]
    assert float(ler(relative)) == pytest.approx(expected("O061"), abs=1e-9)
    assert float(ater(relative, [120, 80], 120)) == pytest.approx(expected("O062"), abs=1e-6)
    assert competitive_ratio(relative, (0.5, 0.5)) == pytest.approx(expected("O063"), abs=1e-6)


def test_temporal_niche_differentiation_as_defined():
    assert apart_in_time((0, 90), (30, 150)) == pytest.approx(expected("O065"), abs=1e-9)
    assert apart_in_time((0, 90), (0, 90)) == 0.0
    assert apart_in_time((0, 60), (90, 150)) == 1.0


def test_reciprocal_yield_law_as_published():
    """Shinozaki & Kira with a 0.5, b 0.2; the relation lettuce follows in Scaife & Jones 1976."""
    a, b, usual = 0.5, 0.2, 4.0
    weight = expected("O068")  # of a plant, 16 to the m²
    held_back = b * usual / (a + b * usual)
    usual_yield = usual / (a + b * usual)
    assert float(relative_yield(16 / usual, held_back)) == pytest.approx(16 * weight / usual_yield, abs=1e-4)
    assert float(relative_yield(1e9, held_back)) == pytest.approx(1.0 / b / usual_yield, rel=1e-6)


@pytest.mark.parametrize("place", ["P", "V"])
def test_published_onion_densities_lie_in_the_range_that_is_drawn(place):
    """Onions at two places (Ratkowsky 1983, in agridat): 19–185 plants/m².

    At the usual 10 by 25 cm, 40 plants/m², the reciprocal law fitted to each place says how far the plants
    hold each other back: between the limits that the program takes where it knows nothing. With it the law
    tells the yield of every plot, from a half to four times the usual number.
    """
    lines = (DATA / "ratkowsky_onions.txt").read_text(encoding="utf-8").splitlines()[1:]
    rows = [line.split() for line in lines]
    density, weight = (np.array([float(r[k]) for r in rows if r[2] == place]) for k in (0, 1))
    fitted = linregress(density, 1.0 / weight)
    usual_weight = 1.0 / (fitted.intercept + fitted.slope * 40.0)
    held_back = fitted.slope * 40.0 * usual_weight
    assert HELD_BACK_LOW <= held_back <= HELD_BACK_HIGH
    told = relative_yield(density / 40.0, held_back) * 40.0 * usual_weight
    assert np.abs(np.log(told / (density * weight))).mean() < 0.12


def _hybrids():
    lines = (DATA / "carmer_maize.txt").read_text(encoding="utf-8").splitlines()[1:]
    found: dict[str, list[tuple[float, float]]] = {}
    for line in lines:
        hybrid, hill, pounds = line.replace('"', "").split()
        found.setdefault(hybrid, []).append((float(hill) * 4000 / 4046.86, float(pounds)))  # per m²
    return [np.array(rows) for rows in found.values()]


def test_the_maize_of_the_catalogue_is_that_of_eight_hybrids():
    """Carmer & Jackobs 1965: the law fitted to the logarithm of grain to the plant, hybrid by hybrid."""
    halves = []
    for density, grain in (rows.T for rows in _hybrids()):
        fitted, _ = curve_fit(
            lambda n, log_w, half: log_w - np.log1p(n / half), density, np.log(grain / density),
            p0=(0.0, 3.0), bounds=([-9.0, 0.01], [9.0, 1e3]),
        )  # fmt: skip
        halves.append(float(fitted[1]))
    told = catalogue().resolve("sweetcorn").half_weight_per_m2
    assert told.mid == pytest.approx(np.median(halves), abs=0.01)
    assert [told.low, told.high] == pytest.approx(sorted(halves)[1:-1:5], abs=0.01)


def test_half_as_many_maize_plants_yield_as_the_authors_own_equation_says():
    """y = x a k^x (Carmer & Jackobs 1965), an equation of another form: between the eight hybrids."""
    crop = catalogue().resolve("sweetcorn")
    need = crop.in_row_m.mid * crop.between_rows_m.mid
    shares = []
    for density, grain in (rows.T for rows in _hybrids()):
        fitted, _ = curve_fit(lambda x, a, k: x * a * k**x, density, grain, p0=(0.5, 0.8))
        shares.append(0.5 * fitted[1] ** (-0.5 / need))
    told = float(relative_yield(0.5, held_back(crop, need).mid))
    assert min(shares) <= told <= max(shares)
    assert told == pytest.approx(np.mean(shares), abs=0.06)

"""The list of places: search, nearest, and its climate against published normals and observations."""

import csv
from datetime import date
from math import cos, radians
from pathlib import Path
from statistics import mean

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from gardencanvas.resources_folder import resources
from gardencanvas.season.dayofyear import day_index
from gardencanvas.season.placenames import Names, fold
from gardencanvas.season.places import Places, places

ORACLES = Path(__file__).resolve().parent.parent / "oracles" / "data"
LIST = places()


def found(typed, limit=20):
    return [place.label for place in LIST.search(typed, limit)]


@pytest.mark.parametrize(
    ("typed", "first"),
    [
        ("Sao Paulo", "São Paulo, Brazil"),
        ("são paulo", "São Paulo, Brazil"),
        ("SAO  PAU", "São Paulo, Brazil"),
        ("zuri", "Zürich, Switzerland"),
        ("Reykjavik", "Reykjavík, Iceland"),
        ("lodz", "Łódź, Poland"),
        ("lond", "London, United Kingdom"),
        ("york", "York, United Kingdom"),
        ("new yo", "New York City, New York, United States"),
        ("petersb", "Saint Petersburg, Russia"),  # a word's beginning, not the name's
        ("ankfurt", "Frankfurt am Main, Germany"),  # within a word
        ("Cologne", "Köln, Germany"),  # in another language
        ("München", "Munich, Germany"),
        ("Muenchen", "Munich, Germany"),
        ("Москва", "Moscow, Russia"),
        ("東京", "Tokyo, Japan"),
        ("서울", "Seoul, South Korea"),
        ("Sanaa", "Sanaa, Yemen"),
        ("Sana'a", "Sanaa, Yemen"),
        ("Springfield, Missouri", "Springfield, Missouri, United States"),
        ("springfield missouri", "Springfield, Missouri, United States"),
        ("Springfield, MO", "Springfield, Missouri, United States"),
        ("Springfield, Illinois, United States", "Springfield, Illinois, United States"),
        ("Boston, UK", "Boston, United Kingdom"),
        ("San José, Costa", "San José, Costa Rica"),
    ],
)
def test_the_place_one_means_comes_first(typed, first):
    assert found(typed)[0] == first


@pytest.mark.parametrize(
    ("slip", "meant"),
    [
        ("Amstredam", "Amsterdam, The Netherlands"),  # two letters swapped
        ("Londno", "London, United Kingdom"),
        ("Brusels", "Brussels, Belgium"),  # one missing
        ("Copennhagen", "Copenhagen, Denmark"),  # one too many
        ("Xopenhagen", "Copenhagen, Denmark"),  # one wrong, the first
        ("Melborne", "Melbourne, Australia"),
        ("Edinbrugh", "Edinburgh, United Kingdom"),
    ],
)
def test_one_slip_still_finds_it(slip, meant):
    assert meant in found(slip)[:3]


def test_larger_towns_come_first_within_a_kind_of_match():
    people = [place.population for place in LIST.search("san", 30) if place.name != "San"]
    assert people == sorted(people, reverse=True)


def test_a_limit_is_kept():
    assert len(LIST.search("a", 7)) == 7
    assert LIST.search("a", 0) == []


@pytest.mark.parametrize(
    "typed", ["", "   ", ",", "…", "\0", "🥕", "\0\n\t", "z" * 10_000, "a " * 5_000, "<b>"]
)
def test_nothing_sensible_finds_nothing_and_does_no_harm(typed):
    assert all(isinstance(label, str) for label in found(typed))
    if not typed.strip(" a<b>"):
        assert len(found(typed)) <= 20
    if not any(c.isalnum() for c in typed):
        assert found(typed) == []


def test_markup_is_read_as_letters():
    assert found("<b>London</b>, <i>") == []
    assert found("'Paris'")[0] == "Paris, France"


@given(st.text(max_size=300))
def test_any_text_gets_at_most_so_many_different_places(typed):
    numbers = [place.number for place in LIST.search(typed, 20)]
    assert len(numbers) <= 20
    assert len(set(numbers)) == len(numbers)


@given(st.integers(0, len(LIST) - 1))
def test_every_place_is_found_by_its_own_name(number):
    place = LIST.place(number)
    assert number in {each.number for each in LIST.search(place.name, 40)} or len(fold(place.name)) < 5
    if place.name:
        assert fold(place.name) in {fold(each.name) for each in LIST.search(place.name, 40)}


@settings(max_examples=500)
@given(st.text(max_size=60))
def test_folding_twice_is_folding_once(text):
    assert fold(fold(text)) == fold(text)


LETTERS = st.text("abc ", min_size=1, max_size=9).map(lambda s: " ".join(s.split())).filter(bool)


def _one_slip_apart(a, b):
    """Damerau's distance of at most one, plainly."""
    if a == b:
        return True
    if len(a) == len(b):
        differing = [i for i in range(len(a)) if a[i] != b[i]]
        if len(differing) == 1:
            return True
        return (
            len(differing) == 2
            and differing[1] == differing[0] + 1
            and a[differing[0]] == b[differing[1]]
            and a[differing[1]] == b[differing[0]]
        )
    longer, shorter = sorted((a, b), key=len, reverse=True)
    if len(longer) != len(shorter) + 1:
        return False
    return any(longer[:i] + longer[i + 1 :] == shorter for i in range(len(longer)))


def _beginnings(name):
    words = name.split(" ")
    for first in range(len(words)):
        rest = " ".join(words[first:])
        yield from (rest[:end] for end in range(1, len(rest) + 1))


@given(st.lists(st.lists(LETTERS, min_size=1, max_size=3), min_size=1, max_size=6), LETTERS)
@example([["aa a"]], "a aa")  # two swapped in the middle of the query
def test_matches_are_those_of_a_plain_search(lines, query):
    names = Names("\n".join("\t".join(line) for line in lines).encode())
    typed = query.encode()

    def which(matches):
        return [n for n, line in enumerate(lines) if any(matches(name) for name in line)]

    assert names.whole(typed).tolist() == which(lambda name: name == query)
    assert names.beginning(typed).tolist() == which(lambda name: f" {name}".find(f" {query}") >= 0)
    assert names.within(typed).tolist() == which(lambda name: query in name)
    whole, slips = names.slipped(typed)
    if len(query) >= 4:
        expected = which(lambda name: any(_one_slip_apart(b, query) for b in _beginnings(name)))
        assert slips.tolist() == expected
    assert set(whole.tolist()) <= set(slips.tolist())


# nearest


def test_the_nearest_place():
    place, km = LIST.nearest(51.5, -0.1)
    assert place.country == "United Kingdom"
    assert km < 5
    middle_of_the_pacific, far = LIST.nearest(-48.9, -123.4)  # the point farthest from land
    assert far > 2600  # 2,688 km from any land
    assert middle_of_the_pacific.name


def test_nearest_across_the_date_line():
    suva = LIST.search("Suva")[0]
    lat, lon = suva.latitude_deg, suva.longitude_deg
    assert LIST.nearest(lat, lon)[0] == suva
    apart = (180.0 - lon) + (180.0 - 179.9)
    place, km = LIST.nearest(lat, -179.9)
    assert km <= apart * 111.32 * cos(radians(lat)) + 1
    assert place.longitude_deg > 170 or place.longitude_deg < -170


@given(st.floats(-90, 90), st.floats(-180, 180))
def test_no_other_place_is_nearer(lat, lon):
    place, km = LIST.nearest(lat, lon)
    assert 0 <= km <= 20_016  # half way round
    # A degree of latitude is 111.2 km on the sphere: no place can be farther off in latitude than it is away.
    assert abs(place.latitude_deg - lat) * 111.1 <= km + 0.1


# climate

# Published normals 1991–2020 of January and July (°C) and of the year's rain (mm), from memory: hence the
# wide tolerances. The list's squares of 28 km hold less town, and hills or sea beside it.
NORMALS = [
    ("London, United Kingdom", 5.5, 18.8, 615),
    ("Berlin, Germany", 1.0, 19.8, 570),
    ("Moscow, Russia", -6.2, 19.7, 700),
    ("Madrid, Spain", 6.5, 26.2, 420),
    ("Cairo, Egypt", 14.0, 28.5, 20),
    ("Yakutsk, Russia", -37.0, 19.9, 240),
    ("Tokyo, Japan", 5.4, 25.7, 1600),
    ("Chicago, Illinois, United States", -3.6, 24.2, 960),
    ("Phoenix, Arizona, United States", 13.5, 35.3, 180),
    ("Mumbai, India", 24.0, 27.7, 2300),
    ("Singapore, Singapore", 26.8, 28.2, 2100),
    ("Nairobi, Kenya", 19.5, 17.0, 900),
    ("Sydney, Australia", 23.5, 13.2, 1150),
    ("Buenos Aires, Argentina", 24.9, 11.2, 1250),
    ("Christchurch, New Zealand", 17.5, 6.3, 600),
]


@pytest.mark.parametrize(("label", "january", "july", "rain"), NORMALS)
def test_climate_is_near_published_normals(label, january, july, rain):
    place = next(place for place in LIST.search(label) if place.label == label)
    climate = LIST.climate_of(place)
    assert climate.mean_c[0] == pytest.approx(january, abs=2.5)
    assert climate.mean_c[6] == pytest.approx(july, abs=2.5)
    assert sum(climate.rain_mm) == pytest.approx(rain, rel=0.45, abs=60)
    assert climate.min_c is None
    assert climate.max_c is None
    assert "Copernicus" in climate.source


def test_climate_is_near_what_was_measured_in_seattle():
    """Daily weather 2012–2015 as the NOAA published it (public domain): four warm years."""
    months = [[] for _ in range(12)]
    with (ORACLES / "seattle_weather_2012_2015.csv").open(encoding="utf-8") as rows:
        for row in csv.DictReader(rows):
            warmth = (float(row["temp_max"]) + float(row["temp_min"])) / 2
            months[date.fromisoformat(row["date"]).month - 1].append(warmth)
    climate = LIST.climate_of(LIST.search("Seattle")[0])
    for normal, measured in zip(climate.mean_c, months, strict=True):
        assert normal == pytest.approx(mean(measured), abs=2.0)


def test_rough_frost_is_near_thirty_observed_years():
    """Brussels 1976–2005, derived from FAO's demonstration weather: means within three weeks."""
    with (ORACLES / "brussels_1976_2005_expected_frost_doy.csv").open(encoding="utf-8") as rows:
        years = list(csv.DictReader(rows))
    rough = LIST.frost_of(LIST.search("Brussels")[0])
    assert rough.minima == "guessed"
    assert rough.frost.basis == "estimated"
    last, first = (mean(float(year[key]) for year in years) - 1 for key in ("last_le0", "first_le0"))
    assert day_index(rough.frost.last) == pytest.approx(last, abs=21)
    assert day_index(rough.frost.first) == pytest.approx(first, abs=21)


@pytest.mark.parametrize("town", ["Singapore", "Mumbai", "Nairobi", "Manaus", "Honolulu"])
def test_no_frost_in_the_tropics(town):
    frost = LIST.frost_of(LIST.search(town)[0]).frost
    assert (frost.last, frost.first, frost.basis) == (None, None, "none")


def test_frost_falls_in_the_south_s_own_spring():
    frost = LIST.frost_of(LIST.search("Christchurch, New Zealand")[0]).frost
    assert frost.last.month in {8, 9, 10, 11}
    assert frost.first.month in {3, 4, 5, 6}


@pytest.mark.parametrize("town", ["Tromsø", "Murmansk", "Norilsk", "Longyearbyen"])
def test_above_the_polar_circle(town):
    place = LIST.search(town)[0]
    assert place.latitude_deg > 66.57
    frost = LIST.frost_of(place).frost
    assert (frost.last.month, frost.last.day) > (5, 15)
    assert (frost.first.month, frost.first.day) < (10, 1)


@given(st.integers(0, len(LIST) - 1))
def test_every_climate_is_one_the_garden_accepts(number):
    place = LIST.place(number)
    climate = LIST.climate_of(place)
    assert -90 <= place.latitude_deg <= 90
    assert -180 <= place.longitude_deg <= 180
    assert -450 <= place.elevation_m <= 6000
    if abs(place.latitude_deg) > 40:  # summers are warmer than winters
        summer, winter = (6, 0) if place.latitude_deg > 0 else (0, 6)
        assert climate.mean_c[summer] > climate.mean_c[winter]


def test_the_list_is_whole_and_credited():
    assert len(LIST) == 34_006
    assert len(Places(resources() / "places" / "places.npz")) == len(LIST)
    credits_text = (resources() / "places" / "LICENCE.md").read_text(encoding="utf-8")
    for needed in ("GeoNames", "by/4.0", "Copernicus Climate Change Service", "ECMWF", "Kartverket"):
        assert needed in credits_text

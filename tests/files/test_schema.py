"""The published schema says what the program accepts: what it writes is valid, what it refuses is not."""

import json

import jsonschema
import pytest
from hypothesis import given, settings

from gardencanvas.files import garden_to_bytes
from gardencanvas.files.schema import schema
from gardencanvas.garden.garden import FORMAT
from gardencanvas.resources_folder import resources
from tests.files.test_fuzzed import _every_kind
from tests.files.test_hostile_files import HOSTILE
from tests.strategies import gardens

SHIPPED = resources() / "format" / "garden.schema.json"


@pytest.fixture(scope="module")
def validator():
    shipped = json.loads(SHIPPED.read_bytes())
    jsonschema.Draft202012Validator.check_schema(shipped)
    return jsonschema.Draft202012Validator(shipped, format_checker=jsonschema.FormatChecker())


def test_the_shipped_schema_is_up_to_date():
    assert json.loads(SHIPPED.read_bytes()) == schema(), "run: python packaging/make_schema.py"


def test_the_demo_is_valid(validator):
    validator.validate(json.loads((resources() / "demo" / "demo.gardencanvas").read_bytes()))


def test_a_garden_with_one_of_every_kind_is_valid(validator):
    validator.validate(json.loads(json.dumps(_every_kind())))


@given(gardens(most=4))
@settings(max_examples=20)
def test_whatever_is_saved_is_valid(value):
    jsonschema.Draft202012Validator(schema()).validate(json.loads(garden_to_bytes(value)))


# of the hostile files, those whose fault a schema can name
NAMED = [
    "a list", "a number", "another JSON", "format true", "format 0", "deep inside", "unknown field",
    "missing name", "name of 10,000", "bed with 3 million corners", "zero spacing",
    "succession that is no id", "succession by number", "date of nonsense",
    "text for a number", "no layout", "latitude 91", "huge number",
]  # fmt: skip


@pytest.mark.parametrize("name", NAMED)
def test_what_is_refused_for_its_form_is_not_valid(validator, name):
    assert not validator.is_valid(json.loads(HOSTILE[name][0]))


def test_only_the_present_format_is_valid(validator):
    document = json.loads(json.dumps(_every_kind()))
    assert validator.is_valid({**document, "format": FORMAT})
    for number in (FORMAT - 1, FORMAT + 1, None):
        assert not validator.is_valid({**document, "format": number})

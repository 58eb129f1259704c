"""The scripts of packaging/, loaded as modules without running them."""

import importlib.util
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest

CHECKOUT = Path(__file__).resolve().parents[2]


def load(script: str, name: str) -> ModuleType:
    spec = importlib.util.spec_from_file_location(name, CHECKOUT / "packaging" / f"{script}.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[name] = module
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="session")
def scripts() -> Iterator[dict[str, ModuleType]]:
    """Fresh modules by script; `test` goes by another name, since the standard library has a `test`."""
    path = list(sys.path)
    loaded = {script: load(script, script) for script in ("environment", "system_libraries")}
    loaded |= {script: load(script, f"packaging_{script}") for script in ("start", "test")}
    yield loaded
    sys.path[:] = path
    for name in ("environment", "system_libraries", "packaging_start", "packaging_test"):
        del sys.modules[name]


@pytest.fixture
def environment(scripts: dict[str, ModuleType]) -> ModuleType:
    return scripts["environment"]


@pytest.fixture
def system_libraries(scripts: dict[str, ModuleType]) -> ModuleType:
    return scripts["system_libraries"]


@pytest.fixture
def start(scripts: dict[str, ModuleType]) -> ModuleType:
    return scripts["start"]


@pytest.fixture
def test_script(scripts: dict[str, ModuleType]) -> ModuleType:
    return scripts["test"]

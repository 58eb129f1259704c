"""A program that is killed, at whatever moment, loses at most two seconds of edits and no file."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

CHECKOUT = Path(__file__).resolve().parents[2]

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="the children are forked")


def killed(folder, kills, seed):
    command = [sys.executable, "-m", "tests.files.killing", str(folder), str(kills), str(seed)]
    done = subprocess.run(command, cwd=CHECKOUT, capture_output=True, text=True, timeout=300, check=False)
    assert done.returncode == 0, done.stderr[-3000:]
    return json.loads(done.stdout)


def test_three_hundred_kills_lose_no_file_and_no_two_seconds(tmp_path):
    found = killed(tmp_path, 300, 2027)
    assert found["fast"]["complaints"] == []
    assert found["slow"]["complaints"] == []
    # the kills did meet writing: some parts of files were left, and some edits were too fresh to be kept
    assert found["fast"]["edits"] > 300
    assert found["fast"]["parts"] + found["fast"]["lost"] > 10

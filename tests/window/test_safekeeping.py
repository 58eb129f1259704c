"""What the window does so that nothing is lost: autosave, recovery, other windows, other programs, faults."""

import logging
import subprocess
import sys
import time
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QTimer
from PySide6.QtGui import QFileOpenEvent, QGuiApplication
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QProgressDialog

from gardencanvas.app import asking, faults, filing, log, start
from gardencanvas.app.meanwhile import meanwhile
from gardencanvas.app.opening import Opening
from gardencanvas.app.recovery_dialog import RecoveryDialog, found_work, offer_work
from gardencanvas.app.saving import beside
from gardencanvas.app.session import Session
from gardencanvas.app.start import demo_garden
from gardencanvas.app.versions_dialog import VersionsDialog
from gardencanvas.files import CannotWrite, open_garden, save_garden
from gardencanvas.files.keeping.autosave import State
from gardencanvas.files.keeping.homes import home_of, work_folder
from gardencanvas.files.keeping.journals import read_journal
from gardencanvas.files.keeping.recovery import left_over
from gardencanvas.files.keeping.sittings import Sitting
from gardencanvas.files.keeping.versions import versions
from gardencanvas.files.stamps import Change
from gardencanvas.garden import edits
from tests.garden.makers import garden, row


@pytest.fixture(autouse=True)
def own_folder(tmp_path, monkeypatch):
    """A user's data folder for each test."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))


@pytest.fixture
def told(monkeypatch):
    """What is told in dialogs, in place of the dialogs."""
    sentences = []
    monkeypatch.setattr(filing, "tell", lambda _w, _t, sentence: sentences.append(sentence))
    return sentences


@pytest.fixture
def path(tmp_path):
    path = tmp_path / "g.gardencanvas"
    save_garden(garden(row("p-1")), path)
    return path


@pytest.fixture
def main(open_window, path):
    return open_window(Session.opened(path))


def edit(main, x=0.25):
    session = main.session
    assert session.propose(edits.shift(session.garden, "l1", ["p-1"], x, 0.0), "Move")


def journal_of(main):
    return main.keeping._sitting.journal


def answer(monkeypatch, name, key):
    monkeypatch.setattr(asking, name, lambda *_a, **_k: key)


# autosave


def test_an_edit_is_on_disk_and_gone_when_it_is_saved(main, qtbot):
    edit(main)
    assert main.standing.text() == "Keeping edits…"
    qtbot.waitUntil(lambda: main.standing.text().startswith("Edits kept"), timeout=10_000)
    assert read_journal(journal_of(main)) == main.session.garden
    assert open_garden(main.session.path) != main.session.garden, "the grower's file is left alone"
    main.actions_.all["save"].trigger()
    assert main.standing.text() == "Saved"
    main.keeping.keep_now()
    assert not journal_of(main).exists()


def test_undo_back_to_the_saved_state_leaves_nothing_to_recover(main):
    edit(main)
    main.keeping.keep_now()
    assert journal_of(main).exists()
    main.session.history.undo()
    main.keeping.keep_now()
    assert not journal_of(main).exists()


def test_a_garden_without_a_file_is_kept_too(open_window):
    main = open_window(Session(garden(row("p-1"))))
    assert not work_folder().exists(), "looking writes nothing"
    edit(main)
    assert main.keeping.keep_now() == ""
    assert read_journal(journal_of(main)) == main.session.garden


def test_closing_in_good_order_leaves_only_versions(main, monkeypatch):
    edit(main)
    main.actions_.all["save"].trigger()
    main.close()
    assert [p.name for p in home_of(main.session.path).iterdir() if p.name not in ("about.json", "door")] == [
        "versions"
    ]
    assert left_over() == []


def test_a_data_folder_that_cannot_be_used_is_told_and_saving_still_works(
    open_window, path, tmp_path, monkeypatch, qtbot
):
    (tmp_path / "data").write_text("in the way")
    main = open_window(Session.opened(path))
    edit(main)
    assert "cannot be used" in main.keeping.keep_now()
    qtbot.waitUntil(lambda: main.standing.text() == "Edits are not kept", timeout=5000)
    assert main.standing.property("role") == "warning"
    main.actions_.all["save"].trigger()
    assert open_garden(path) == main.session.garden
    assert "without an earlier version" in main.statusBar().currentMessage()


# recovery


def crash(main):
    """The window is gone as if the process had been killed."""
    main.keeping.keep_now()
    main.keeping._sitting.abandon()
    main.keeping._finished = True


def recovery(main, qtbot):
    dialog = RecoveryDialog(main, found_work())
    qtbot.addWidget(dialog)
    return dialog


@pytest.fixture
def crashed(main, open_window, path):
    """A fresh window after another one crashed with an edit that no file held; and that edit."""
    edit(main)
    worked = main.session.garden
    crash(main)
    return open_window(Session(garden())), worked


def test_what_was_worked_on_is_offered_with_what_differs(crashed, qtbot):
    main, _worked = crashed
    dialog = recovery(main, qtbot)
    assert dialog.list.count() == 1
    assert "1 planting changed in First" in dialog.what.text()
    dialog.reject()
    assert len(left_over()) == 1, "put off is not given up"


def test_opening_it_gives_the_work_unsaved_and_one_undo_away_from_the_file(crashed, qtbot, path):
    main, worked = crashed
    dialog = recovery(main, qtbot)
    dialog.open.click()
    assert main.session.garden == worked
    assert main.session.path == path
    assert main.session.unsaved
    assert not main.keeping.read_only
    assert dialog.result() == QDialog.DialogCode.Accepted
    main.session.history.undo()
    assert main.session.garden == open_garden(path)
    assert not main.session.unsaved
    assert left_over() == []


def test_opening_it_cannot_lose_it_to_a_second_crash(crashed, qtbot):
    main, worked = crashed
    recovery(main, qtbot).open.click()
    crash(main)
    (hand,) = found_work()
    assert hand.garden() == worked
    hand.let_go()


def test_keeping_both_writes_it_beside_the_file(crashed, qtbot, path):
    main, worked = crashed
    before = path.read_bytes()
    recovery(main, qtbot).both.click()
    assert path.read_bytes() == before
    (other,) = [p for p in path.parent.glob("*.gardencanvas") if p != path]
    assert "recovered" in other.name
    assert open_garden(other) == worked
    assert left_over() == []


def test_keeping_the_files_leaves_the_work_among_the_versions(crashed, qtbot, path):
    main, worked = crashed
    recovery(main, qtbot).drop.click()
    assert open_garden(versions(path)[0].file) == worked
    assert left_over() == []


def test_a_damaged_journal_is_shown_and_harms_nothing(crashed, qtbot):
    main, _worked = crashed
    (left,) = left_over()
    left.journal.write_bytes(b"\x00" * 100)
    dialog = recovery(main, qtbot)
    assert "cannot be read" in dialog.what.text()
    assert not dialog.open.isEnabled()
    dialog.drop.click()
    assert left_over() == []


def test_nothing_is_offered_where_nothing_is_left(main, told):
    offer_work(main, asked=True)
    assert told == ["No window ended with unsaved work."]


WINDOW = """
import sys
from pathlib import Path
from gardencanvas.app.session import Session
from gardencanvas.app.start import application
from gardencanvas.app.window import MainWindow
from gardencanvas.garden import edits

app = application()
window = MainWindow(Session.opened(Path(sys.argv[1])))
window.show()
session = window.session
session.propose(edits.shift(session.garden, "l1", ["p-1"], 0.25, 0.0), "Move")
window.keeping.stood.connect(lambda standing: print(standing.state, flush=True))
app.exec()
"""


def test_a_window_that_is_really_killed_leaves_its_work_to_the_next_start(
    path, open_window, monkeypatch, tmp_path, qtbot
):
    """A process of its own, ended by SIGKILL once its first edit is on disk; then what a start does."""
    command = [sys.executable, "-c", WINDOW, str(path)]
    child = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    assert child.stdout is not None
    for line in child.stdout:
        if line.strip() == State.KEPT:
            break
    assert left_over() == [], "it lives"
    child.kill()
    child.wait()
    child.stdout.close()
    offered = []

    def answered(dialog):
        offered.append(dialog.what.text())
        dialog.open.click()

    monkeypatch.setattr(RecoveryDialog, "exec", answered)
    main = open_window(Session(garden()))
    start._first_questions(main, own=False)
    assert offered == ["Against the file: 1 planting changed in First."]
    (planting,) = main.session.garden.layouts[0].plantings
    assert planting.pattern.origin == (0.25, 0.0)
    assert main.session.path == path
    assert not main.keeping.read_only, "the dead window's claim was stale"


# other windows


def test_a_second_window_is_told_and_stays_read_only(main, open_window, path, monkeypatch, qtbot):
    asked = []
    monkeypatch.setattr(
        asking, "ask_held", lambda _w, name, holder: asked.append((name, holder.pid)) or "read"
    )
    second = open_window(Session.opened(path))
    qtbot.waitUntil(lambda: bool(asked), timeout=5000)
    assert asked[0][0] == "g.gardencanvas"
    assert second.keeping.read_only
    assert "read-only" in second.windowTitle()
    assert "Read-only" in second.standing.text()
    edit(second)
    before = path.read_bytes()
    answer(monkeypatch, "ask_read_only", None)
    assert not second.filing.save(second.session)
    assert path.read_bytes() == before
    other = path.with_name("other.gardencanvas")
    answer(monkeypatch, "ask_read_only", "other")
    monkeypatch.setattr(filing, "ask_save", lambda *_: other)
    assert second.filing.save(second.session)
    assert not second.keeping.read_only
    assert open_garden(other) == second.session.garden


def test_taking_over_makes_the_first_read_only(main, open_window, path, monkeypatch, qtbot):
    answer(monkeypatch, "ask_held", "take")
    second = open_window(Session.opened(path))
    qtbot.waitUntil(lambda: not second.keeping.read_only, timeout=5000)
    edit(second)
    assert second.filing.save(second.session)
    edit(main, 0.5)
    answer(monkeypatch, "ask_read_only", None)
    assert not main.filing.save(main.session)
    assert main.keeping.read_only
    assert "read-only" in main.windowTitle()
    assert open_garden(path) == second.session.garden


def test_the_first_sees_that_it_was_taken_over_while_it_works_on(main, open_window, path, monkeypatch, qtbot):
    answer(monkeypatch, "ask_held", "take")
    second = open_window(Session.opened(path))
    qtbot.waitUntil(lambda: not second.keeping.read_only, timeout=5000)
    edit(main, 0.5)
    assert main.keeping.keep_now() == ""
    qtbot.waitUntil(lambda: "Read-only" in main.standing.text(), timeout=5000)
    assert read_journal(journal_of(main)) == main.session.garden, "its work is kept all the same"


# other programs


@pytest.fixture
def theirs(path):
    return edits.rebuilt(open_garden(path), name="Theirs")


@pytest.mark.parametrize("key", ["mine", "theirs", "both", None])
def test_a_file_changed_by_another_program_is_not_saved_over_unasked(main, path, theirs, monkeypatch, key):
    edit(main)
    mine = main.session.garden
    save_garden(theirs, path)
    answer(monkeypatch, "ask_changed", key)
    done = main.filing.save(main.session)
    assert done is (key is not None)
    assert open_garden(path) == (mine if key == "mine" else theirs)
    kept = [open_garden(v.file) for v in versions(path)]
    if key == "mine":
        assert theirs in kept, "what was written over is a version"
    elif key == "theirs":
        assert main.session.garden == theirs
        assert mine in kept
    elif key == "both":
        assert open_garden(main.session.path) == mine
        assert "mine" in main.session.path.name
    else:
        assert main.session.garden == mine
        assert main.session.unsaved


def test_a_change_is_noticed_when_the_window_comes_to_the_front(main, path, theirs, monkeypatch, qtbot):
    asked = []
    monkeypatch.setattr(asking, "ask_changed", lambda *_a, **k: asked.append(k["unsaved"]) or "theirs")
    save_garden(theirs, path)
    monkeypatch.setattr(type(main), "isActiveWindow", lambda _self: True)
    main.changeEvent(QEvent(QEvent.Type.ActivationChange))
    qtbot.waitUntil(lambda: main.session.garden == theirs, timeout=5000)
    assert asked == [False]


def test_each_change_is_told_once(main, path, theirs, monkeypatch, qtbot):
    seen = []
    main.keeping.file_changed.disconnect()
    main.keeping.file_changed.connect(seen.append)
    save_garden(theirs, path)
    for _ in range(3):
        main.keeping.look()
        qtbot.waitUntil(lambda: not main.keeping._looking, timeout=5000)
    assert seen == [Change.CHANGED]


def test_a_stick_that_was_pulled_out_loses_nothing(main, path, monkeypatch, told):
    """The folder is gone: the save fails in words, the edits stay, here and in the journal."""
    edit(main)
    path.parent.rename(path.parent.with_name("pulled-out"))
    try:
        answer(monkeypatch, "ask_changed", "again")
        assert not main.filing.save(main.session)
    finally:
        path.parent.with_name("pulled-out").rename(path.parent)
    assert "g.gardencanvas could not be written: No such file or directory." in told[0]
    assert "Your changes are still here" in told[0]
    assert main.session.unsaved


def test_a_file_that_the_system_asks_to_open_is_opened(qapp, main, path):
    """As the Finder of macOS does: an event, no argument."""
    other = path.with_name("other.gardencanvas")
    save_garden(garden(row("p-9")), other)
    opening = Opening(main)
    qapp.installEventFilter(opening)
    QApplication.sendEvent(qapp, QFileOpenEvent(str(other)))
    qapp.removeEventFilter(opening)
    assert main.session.path == other
    assert main.session.garden == garden(row("p-9"))


# saving


def test_a_slow_disk_does_not_freeze_the_window(main, qtbot):
    """A save that hangs shows what is going on; timers run meanwhile."""
    seen = []

    def slow():
        until = time.monotonic() + 20
        while not seen and time.monotonic() < until:
            time.sleep(0.02)
        return "written"

    timer = QTimer()
    timer.setInterval(50)

    def look():
        shown = [w for w in main.findChildren(QProgressDialog) if w.isVisible()]
        if shown:
            seen.append(shown[0].labelText())
            assert not main.close(), "it must not be closed over a save"

    timer.timeout.connect(look)
    timer.start()
    assert meanwhile(main, "Saving “g”.", slow) == "written"
    timer.stop()
    assert seen[0] == "Saving “g”."


def test_what_fails_meanwhile_fails_here(main):
    def fail():
        raise CannotWrite("no room")

    with pytest.raises(CannotWrite, match="no room"):
        meanwhile(main, "x", fail)


def test_a_name_beside_a_file_is_free(path):
    first = beside(path, "mine")
    first.write_text("")
    second = beside(path, "mine")
    assert first != second
    assert not second.exists()
    assert second.suffix == ".gardencanvas"


# versions


def test_versions_show_picture_and_differences_and_come_back_as_a_layout(main, qtbot):
    before = main.session.garden
    edit(main)
    main.actions_.all["save"].trigger()
    dialog = VersionsDialog(main)
    qtbot.addWidget(dialog)
    assert dialog.list.count() == 2
    dialog.list.setCurrentRow(1)
    qtbot.waitUntil(lambda: "1 planting changed" in dialog.what.text(), timeout=5000)
    image = dialog.picture.pixmap().toImage()
    assert len({image.pixel(x, image.height() // 2) for x in range(image.width())}) > 5, "not a blank sheet"
    dialog.as_layout.click()
    assert main.session.garden.layouts[0].name == "First"
    restored = main.session.layout
    assert restored.name.startswith("First (")
    assert restored.plantings == before.layouts[0].plantings
    main.session.history.undo()
    assert len(main.session.garden.layouts) == 1


def test_a_version_comes_back_as_a_file(main, qtbot, monkeypatch, path):
    before = main.session.garden
    edit(main)
    main.actions_.all["save"].trigger()
    dialog = VersionsDialog(main)
    qtbot.addWidget(dialog)
    dialog.list.setCurrentRow(1)
    qtbot.waitUntil(lambda: "1 planting changed" in dialog.what.text(), timeout=5000)
    other = path.with_name("old.gardencanvas")
    monkeypatch.setattr(filing, "ask_save", lambda *_: other)
    dialog.as_file.click()
    assert open_garden(other) == before
    assert main.session.path == path


def test_a_damaged_version_is_told_and_cannot_be_restored(main, qtbot):
    edit(main)
    main.actions_.all["save"].trigger()
    versions(main.session.path)[0].file.write_bytes(b"{")
    dialog = VersionsDialog(main)
    qtbot.addWidget(dialog)
    assert "cut short" in dialog.what.text()
    assert not dialog.as_layout.isEnabled()


# faults and the log


@pytest.fixture
def log_file(tmp_path, monkeypatch):
    monkeypatch.setattr("platformdirs.user_log_path", lambda *_a, **_k: tmp_path)
    before = list(log.LOG.handlers)
    yield log.start_log()
    for handler in set(log.LOG.handlers) - set(before):
        log.LOG.removeHandler(handler)
        handler.close()


def fall(words):
    try:
        try:
            raise ValueError(words)
        except ValueError as cause:
            raise RuntimeError(f"while planting {words}") from cause
    except RuntimeError:
        return sys.exc_info()


def test_a_fault_says_what_is_safe_after_writing_the_unsaved_work(main, log_file, monkeypatch):
    edit(main)
    shown = []
    handler = faults.Faults(main, main.keep_now)
    monkeypatch.setattr(faults.QMessageBox, "exec", lambda box: shown.append(box) or 0)
    handler._hook(*fall("Aunt Mabel's secret bed"))
    (box,) = shown
    assert read_journal(journal_of(main)) == main.session.garden
    assert "Your work is safe" in box.informativeText()
    assert "You can go on" in box.informativeText()
    assert "Aunt Mabel" in box.detailedText(), "the grower sees all"
    (copy,) = [b for b in box.buttons() if "Copy" in b.text()]
    copy.click()
    assert "Traceback" in QGuiApplication.clipboard().text()
    text = log_file.read_text("utf-8")
    assert "RuntimeError" in text
    assert "ValueError" in text
    assert "test_safekeeping.py" in text
    assert "Mabel" not in text, "the log holds nothing of what the grower wrote"


def test_a_fault_says_so_when_the_work_could_not_be_written(main, monkeypatch):
    shown = []
    monkeypatch.setattr(faults.QMessageBox, "exec", lambda box: shown.append(box.informativeText()) or 0)
    faults.Faults(main, lambda: "No space left on device.")._hook(*fall("x"))
    faults.Faults(main, lambda: 1 // 0)._hook(*fall("x"))
    assert "could not be written: No space left" in shown[0]
    assert "ZeroDivisionError" in shown[1]


def test_a_fault_is_shown_as_plain_text(main, qtbot):
    box = faults.Faults(main).box("<img src=x>", "<b>story</b>", "safe")
    qtbot.addWidget(box)
    box.show()
    labels = [label for label in box.findChildren(QLabel) if "<img" in label.text()]
    assert labels
    assert all(label.textFormat().name == "PlainText" for label in labels)


def test_the_log_is_rotated(log_file):
    for _ in range(40):
        log.LOG.error("x" * 30_000)
    files = sorted(log_file.parent.glob("gardencanvas.log*"))
    assert len(files) == 3
    assert all(f.stat().st_size <= 262_144 for f in files)


def test_a_log_that_cannot_be_written_stops_nothing(monkeypatch, tmp_path, caplog):
    blocked = tmp_path / "blocked"
    blocked.write_text("")
    monkeypatch.setattr("platformdirs.user_log_path", lambda *_a, **_k: blocked / "deeper")
    with caplog.at_level(logging.WARNING):
        assert log.start_log() is None


def test_a_thread_that_falls_is_told_too(main, monkeypatch):
    shown = []
    handler = faults.Faults(main)
    monkeypatch.setattr(handler, "_show", lambda *_: None)
    handler.happened.connect(lambda what, _story: shown.append(what))
    kind, error, trace = fall("x")

    class Fault:
        exc_type, exc_value, exc_traceback = kind, error, trace

    handler._thread_hook(Fault)
    assert shown == ["RuntimeError: while planting x"]


def test_the_demo_is_not_touched_by_looking_at_it(open_window):
    open_window(Session(demo_garden()))
    assert not work_folder().exists()


def test_a_claim_by_a_path_in_another_script(open_window, tmp_path):
    path: Path = tmp_path / "сад 庭" / "حديقة.gardencanvas"
    path.parent.mkdir()
    save_garden(garden(row("p-1")), path)
    main = open_window(Session.opened(path))
    edit(main)
    assert main.keeping.keep_now() == ""
    main.actions_.all["save"].trigger()
    assert open_garden(path) == main.session.garden
    assert Sitting(path).claim() is not None
    assert main.keeping.standing is None or main.keeping.standing.state is not State.FAILED

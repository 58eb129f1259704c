"""The command that fills ground with a crop: in a selected bed at once, else where one points."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from gardencanvas.app.fill.asked import asked, bed_under, meant_bed
from gardencanvas.canvas.tools.fill_place import FillPlaceTool, Where
from gardencanvas.garden.ground import Bed

if TYPE_CHECKING:
    from gardencanvas.app.fill.dialog import FillDialog
    from gardencanvas.app.window import MainWindow

Key = tuple[str, str | None]  # crop and variety


def ask_fill(window: "MainWindow", key: Key | None) -> "FillDialog | None":
    """Fill the selected bed, or that of the selected planting; without one, let the grower point at it."""
    if key is None:
        window.say(window.tr("Choose a crop in the seed tin first."))
        return None
    bed = meant_bed(window.session)
    if bed is not None:
        return open_dialog(window, key, bed)
    tool = window.view.tools["fill"]
    if isinstance(tool, FillPlaceTool):
        tool.chosen = lambda where: _pointed(window, key, where)
    window.view.set_tool("fill")
    window.view.setFocus(Qt.FocusReason.OtherFocusReason)
    return None


def _pointed(window: "MainWindow", key: Key, where: Where) -> None:
    bed = bed_under(window.session, where)
    if bed is None:
        window.say(window.tr("There is no bed there."))
        return
    window.view.set_tool("select")
    open_dialog(window, key, bed, where)


def open_dialog(window: "MainWindow", key: Key, bed: Bed, where: Where | None = None) -> "FillDialog":
    """Open the dialog beside the plan; it closes itself."""
    from gardencanvas.app.fill.dialog import FillDialog  # not needed to start

    dialog = FillDialog(window, asked(window.session, *key, bed, where))
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    corner = window.frameGeometry().topRight()
    dialog.move(max(corner.x() - dialog.sizeHint().width() - 24, 0), corner.y() + 90)
    dialog.open()
    return dialog

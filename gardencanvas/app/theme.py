"""The window's style sheet, made from the one palette."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.fit.report import Verdict
from gardencanvas.resources_folder import resources


def wants_dark(choice: str) -> bool:
    """Whether to be dark, for the choice ``light``, ``dark`` or ``system``."""
    if choice == "system":
        return QGuiApplication.styleHints().colorScheme() is Qt.ColorScheme.Dark
    return choice == "dark"


def apply(app: QApplication, *, dark: bool) -> Palette:
    """Give the application its colours; returns them."""
    colours = palette(dark)
    roles = QPalette()
    role = QPalette.ColorRole
    for which, colour in {
        role.Window: colours.paper,
        role.WindowText: colours.ink,
        role.Base: colours.panel,
        role.AlternateBase: colours.paper,
        role.Text: colours.ink,
        role.Button: colours.panel,
        role.ButtonText: colours.ink,
        role.PlaceholderText: colours.quiet,
        role.Highlight: colours.accent,
        role.HighlightedText: colours.panel,
        role.ToolTipBase: colours.panel,
        role.ToolTipText: colours.ink,
        role.Link: colours.accent,
    }.items():
        roles.setColor(which, QColor(colour))
    for which in (role.WindowText, role.Text, role.ButtonText):
        roles.setColor(QPalette.ColorGroup.Disabled, which, QColor(colours.quiet))
    app.setPalette(roles)
    app.setStyleSheet(sheet(colours, app.font().pointSizeF()))
    return colours


def sheet(c: Palette, points: float) -> str:
    """The style sheet; sizes follow the system font of ``points``."""

    def arrow(way: str) -> str:
        return (resources() / "icons" / f"{way}-{'dark' if c.dark else 'light'}.svg").as_posix()

    small, title = 0.88 * points, 1.22 * points
    line = max(18, round(2 * points))  # pixels; a least height given here outweighs that of the font
    pills = "\n".join(
        f'QLabel[role="pill"][verdict="{v.word}"] {{ background: {c.verdict(v)}; color: {c.panel}; }}'
        f'\nQFrame[role="card"][verdict="{v.word}"] {{ border-left: 3px solid {c.verdict(v)}; }}'
        for v in Verdict
    )
    return f"""
QMainWindow, QSplitter {{ background: {c.desk}; }}
QMenuBar {{ background: {c.chrome}; color: {c.chrome_ink}; padding: 3px 8px; }}
QMenuBar::item {{ padding: 4px 10px; border-radius: 4px; background: transparent; }}
QMenuBar::item:selected {{ background: {c.chrome_hover}; }}
QMenu {{ background: {c.panel}; color: {c.ink}; border: 1px solid {c.line}; padding: 4px; }}
QMenu::item {{ padding: 5px 26px 5px 18px; border-radius: 4px; }}
QMenu::item:selected {{ background: {c.selected}; color: {c.ink}; }}
QMenu::item:disabled {{ color: {c.quiet}; }}
QMenu::separator {{ height: 1px; background: {c.line}; margin: 4px 8px; }}
QToolTip {{ background: {c.panel}; color: {c.ink}; border: 1px solid {c.line}; padding: 5px; }}
QFrame[role="panel"], QScrollArea[role="panel"], QWidget[role="panel"] {{
  background: {c.panel}; border-radius: 8px; border: none; }}
QScrollArea > QWidget > QWidget {{ background: {c.panel}; }}
QScrollArea > QWidget {{ background: {c.panel}; border-radius: 8px; }}
*[role="title"] {{ font-size: {title:.1f}pt; font-weight: 600; }}
*[role="heading"] {{ font-weight: 600; }}
*[role="value"] {{ font-weight: 600; }}
*[role="quiet"], *[role="source"] {{ color: {c.quiet}; }}
*[role="source"] {{ font-size: {small:.1f}pt; }}
*[role="hint"] {{ color: {c.quiet}; }}
*[role="estimated"] {{ color: {c.quiet}; font-weight: 600; }}
*[role="warning"] {{ color: {c.verdicts[2]}; font-weight: 600; }}
*[role="fault"] {{ color: {c.verdicts[3]}; }}
QFrame[role="card"][severity="high"] {{ border-left: 3px solid {c.verdicts[3]}; }}
QFrame[role="card"][severity="medium"] {{ border-left: 3px solid {c.verdicts[2]}; }}
QFrame[role="card"][severity="low"] {{ border-left: 3px solid {c.line}; }}
QLabel[role="pill"] {{ border-radius: 8px; padding: 2px 12px; min-height: {0.83 * line:.0f}px; font-weight: 600; font-size: {small:.1f}pt; }}
QFrame[role="card"] {{ background: {c.paper}; border-radius: 4px; }}
{pills}
QPushButton {{ background: {c.panel}; color: {c.ink}; border: 1px solid {c.border};
  border-radius: 6px; padding: 5px 12px; }}
QPushButton:hover {{ background: {c.selected}; }}
QPushButton:disabled {{ color: {c.quiet}; background: {c.paper}; }}
QPushButton[role="remedy"] {{ color: {c.accent}; border: 1px solid {c.accent}; text-align: left;
  font-weight: 600; padding: 5px 10px; }}
QPushButton[role="remedy"]:hover {{ color: {c.ink}; }}
QPushButton[role="remedy"]:focus {{ border: 2px solid {c.accent}; padding: 4px 9px; }}
QToolButton {{ color: {c.ink}; background: transparent; border: 1px solid transparent; border-radius: 6px;
  padding: 4px 9px; }}
QToolButton[role="fold"], QToolButton[role="fold"]:checked {{ background: transparent;
  border: 1px solid transparent; padding: 3px 4px; font-weight: 600; }}
QToolButton[role="fold"]:focus {{ border: 1px solid {c.accent}; }}
QToolButton[role="small"] {{ padding: 3px 4px; }}
QToolButton::menu-indicator {{ image: none; }}
QToolButton:hover {{ background: {c.selected}; }}
QToolButton:checked {{ background: {c.selected}; border: 1px solid {c.accent}; }}
QLineEdit, QAbstractSpinBox, QComboBox {{ background: {c.field}; color: {c.ink};
  border: 1px solid {c.border}; border-radius: 6px; padding: 3px 6px; min-height: {line}px;
  selection-background-color: {c.accent}; selection-color: {c.panel}; }}
QDateEdit[role="corner"] {{ padding: 0 6px; min-height: {line - 2}px; }}
QLineEdit:focus, QAbstractSpinBox:focus, QComboBox:focus {{ border: 2px solid {c.accent}; padding: 2px 5px; }}
QDateEdit[role="corner"]:focus {{ padding: 0 5px; min-height: {line - 4}px; }}
QLineEdit[fault="true"] {{ border: 2px solid {c.verdicts[3]}; padding: 2px 5px; }}
QCheckBox, QRadioButton, QSlider {{ border: 2px solid transparent; border-radius: 4px; }}
QCheckBox:focus, QRadioButton:focus, QSlider:focus {{ border: 2px solid {c.accent}; }}
QPushButton:focus, QToolButton:focus {{ border: 2px solid {c.accent}; }}
QComboBox::drop-down, QDateEdit::drop-down {{ border: none; width: 20px; subcontrol-position: center right; }}
QComboBox::down-arrow, QDateEdit::down-arrow {{ image: url("{arrow("down")}"); width: 10px; height: 10px; }}
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button {{ border: none; background: transparent; width: 16px; }}
QAbstractSpinBox::up-arrow {{ image: url("{arrow("up")}"); width: 8px; height: 8px; }}
QAbstractSpinBox::down-arrow {{ image: url("{arrow("down")}"); width: 8px; height: 8px; }}
QComboBox QAbstractItemView {{ background: {c.panel}; color: {c.ink};
  selection-background-color: {c.selected}; selection-color: {c.ink}; }}
QTreeView, QListView, QTableView {{ background: {c.panel}; color: {c.ink}; border: none; outline: none;
  selection-background-color: {c.selected}; selection-color: {c.ink}; }}
QTreeView::item, QListView::item, QTableView::item {{ padding: 3px 2px; border: none; }}
QTreeView::item:selected, QListView::item:selected, QTableView::item:selected {{
  background: {c.selected}; color: {c.ink}; }}
QTreeView:focus, QListView:focus, QTableView:focus {{ border: 1px solid {c.accent}; border-radius: 4px; }}
QTableCornerButton::section {{ background: {c.panel}; border: none; border-bottom: 1px solid {c.line}; }}
QHeaderView {{ background: {c.panel}; }}
QHeaderView::section {{ background: {c.panel}; color: {c.quiet}; border: none;
  border-bottom: 1px solid {c.line}; padding: 4px 6px; font-size: {small:.1f}pt; }}
QTabWidget::pane {{ border: none; background: {c.panel}; border-radius: 8px; top: -1px; }}
QTabWidget > QWidget {{ background: {c.panel}; }}
QTabBar {{ background: transparent; qproperty-drawBase: 0; }}
QTabBar::tab {{ background: transparent; color: {c.quiet}; padding: 6px 9px; border: none;
  border-bottom: 2px solid transparent; font-weight: 600; }}
QTabBar::tab:selected {{ color: {c.ink}; border-bottom: 2px solid {c.accent}; }}
QTabBar::tab:focus {{ color: {c.accent}; }}
QSplitter::handle {{ background: {c.desk}; }}
QStatusBar {{ background: {c.desk}; color: {c.ink}; }}
QStatusBar::item {{ border: none; }}
QScrollBar:vertical {{ background: transparent; width: 11px; margin: 2px; }}
QScrollBar:horizontal {{ background: transparent; height: 11px; margin: 2px; }}
QScrollBar::handle {{ background: {c.border}; border-radius: 3px; min-height: 28px; min-width: 28px; }}
QScrollBar::handle:hover {{ background: {c.quiet}; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
"""

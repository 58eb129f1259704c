"""The language of the window: Qt's translators, how numbers and days are written, the program's own words."""

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator
from PySide6.QtWidgets import QApplication

from gardencanvas.app import settings
from gardencanvas.resources_folder import resources
from gardencanvas.words.language import CONTEXT, ENGLISH, speak

SYSTEM = "system"
LANGUAGES = {ENGLISH: "English", "de": "Deutsch"}
"""Code as in ISO 639-1, and what the language calls itself."""


def chosen() -> str:
    """The code of the language to show: the one that was chosen, or else the system's where it is known."""
    kept = settings.text("language", SYSTEM)
    return kept if kept in LANGUAGES else of_system(QLocale.system().uiLanguages())


def of_system(wanted: list[str]) -> str:
    """The first of the languages that the system asks for which the program knows, else English."""
    codes = (each.replace("_", "-").split("-")[0].lower() for each in wanted)
    return next((code for code in codes if code in LANGUAGES), ENGLISH)


def install(app: QApplication, code: str) -> None:
    """Let all windows made from now on speak a language. English needs no translation file."""
    for known in app.findChildren(QTranslator):
        QCoreApplication.removeTranslator(known)
        known.deleteLater()
    system = QLocale.system()
    QLocale.setDefault(system if system.language() == QLocale(code).language() else QLocale(code))
    if code == ENGLISH:
        speak(None)
        return
    _load(app, f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
    _load(app, f"gardencanvas_{code}", str(resources() / "translations"))
    speak(_translated, code)


def _load(app: QApplication, name: str, folder: str) -> None:
    """Install a translation file; Qt's own may be missing, then its few texts stay English."""
    translator = QTranslator(app)
    if translator.load(name, folder):
        QCoreApplication.installTranslator(translator)


def _translated(text: str, number: int | None) -> str:
    return QCoreApplication.translate(CONTEXT, text, None, -1 if number is None else number)

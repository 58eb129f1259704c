"""Write resources/format/garden.schema.json from the garden's values: run it after changing them."""

import sys
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(CHECKOUT))

from gardencanvas.files import write_whole
from gardencanvas.files.schema import schema_text


def main() -> int:
    path = CHECKOUT / "resources" / "format" / "garden.schema.json"
    path.parent.mkdir(exist_ok=True)
    write_whole(path, schema_text().encode())
    print(path)
    return 0


if __name__ == "__main__":
    sys.exit(main())

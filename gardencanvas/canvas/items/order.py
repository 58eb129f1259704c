"""What lies above what on the plan."""

PATH = 0.0
BED = 10.0
SUPPORT = 20.0
PLANTING = 30.0  # plus height in metres, so that tall plants hide low ones
FIXTURE = 45.0
COVER = 50.0
SHADOW = 55.0
CROWN = 57.0
SELECTION = 59.0
MARK = 60.0
LABEL = 70.0
HANDLE = 80.0
GHOST = 90.0
TOOL = 95.0

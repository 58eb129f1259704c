"""What the grower drew: frozen values and pure edits."""

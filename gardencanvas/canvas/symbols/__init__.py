"""Plants painted in code by habit: our own drawing, seen from straight above."""

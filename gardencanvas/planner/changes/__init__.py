"""The changes a remedy may make, one module a kind: each gives ladders of steps and how to take one."""

"""One function for each thing a person can do; the only door the app and the command line use."""

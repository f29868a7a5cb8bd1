"""The pages of the wizard, one screen a file."""

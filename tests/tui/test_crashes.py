"""What once stopped the app, walked again: each ends in a page to go on with."""

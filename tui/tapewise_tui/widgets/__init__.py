"""Parts that pages are made of; they send messages up."""

"""All words of the bot: one file per feature and language."""

"""Short words of a talk: a yes, a thank you, a question about the bot, something to take back or pass on."""

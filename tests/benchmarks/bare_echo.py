"""The plainest echo bot that the library can make, as its examples show it: the measure for our own."""

import os

from telegram import Update
from telegram.ext import Application, ContextTypes, MessageHandler, filters


async def echo(update: Update, _context: ContextTypes.DEFAULT_TYPE) -> None:
    if update.message and update.message.text:
        await update.message.reply_text(update.message.text)


def main() -> None:
    base_url = f"{os.environ['BELLWETHER_API_URL']}/bot"
    application = Application.builder().token(os.environ["BELLWETHER_TOKEN"]).base_url(base_url).build()
    application.add_handler(MessageHandler(filters.TEXT, echo))
    application.run_polling()


if __name__ == "__main__":
    main()

" Plans of Sawbuck.
autocmd BufRead,BufNewFile *.sawbuck setfiletype sawbuck

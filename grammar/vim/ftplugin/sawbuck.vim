" How plans of Sawbuck are typed. Made by .ci/vim-syntax.mjs: change that.
if exists("b:did_ftplugin")
  finish
endif
let b:did_ftplugin = 1

setlocal commentstring=#\ %s comments=b:#
setlocal formatoptions-=t formatoptions+=cql
setlocal expandtab shiftwidth=2 softtabstop=2
setlocal iskeyword=@,48-57,_,-,192-255
setlocal suffixesadd=.sawbuck
let &l:include = '^\%(shop\|bring\|enclosed\)\s\+'
let &l:define = '^\%(measure\|stock\|sheet\|roll\|fastener\|finish\|fill\|part\|assembly\|ring\|box\)\s\+'

let b:undo_ftplugin = "setlocal cms< com< fo< et< sw< sts< isk< sua< inc< def<"

" Colours for plans of Sawbuck. Made by .ci/vim-syntax.mjs from the language itself: change that.
if exists("b:current_syntax")
  finish
endif
scriptencoding utf-8
syntax case match

syntax match sawbuckWord ;\v[A-Za-zÀ-ÖØ-öø-ÿ_]%(-?[A-Za-z0-9À-ÖØ-öø-ÿ_])*-?;
syntax match sawbuckFunction ;\v[a-z]+\(@=;
syntax match sawbuckFunction ;\vround[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!%(\s+of[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!)@!;
syntax match sawbuckRelation ;\v%(millimetres|crossings|anywhere|opposite|beveled|exactly|instead|mitered|overall|through|upright|across|behind|inches|metric|people|person|planed|spread|square|about|above|along|apart|below|coats|empty|green|least|short|both|coat|deep|down|each|flat|from|gaps|high|into|less|long|more|most|onto|past|plus|than|wide|with|all|and|bad|dry|one|out|per|the|at|by|in|it|mm|of|on|to|up)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!;
syntax match sawbuckSign ;\v\+;
syntax match sawbuckSign ;\v[-−–];
syntax match sawbuckSign ;\v\*;
syntax match sawbuckSign ;\v/;
syntax match sawbuckSign ;\v\<\=|≤;
syntax match sawbuckSign ;\v\>\=|≥;
syntax match sawbuckSign ;\v\<;
syntax match sawbuckSign ;\v\>;
syntax match sawbuckSign ;\v\=;
syntax match sawbuckSign ;\v%(%(^[A-Za-zÀ-ÖØ-öø-ÿ_]%(-?[A-Za-z0-9À-ÖØ-öø-ÿ_])*-?|[A-Za-z0-9À-ÖØ-öø-ÿ_-]@<!%(of|and|into|to|onto|with|through|-)|%(,|\=|\(|\+|\*|/))\s+)@<!%(%(\s|["'″′”’)])@<=x%([A-Za-z0-9_-])@!|["'″′”’)]@<=x[0-9½¼¾]@=|×);
syntax match sawbuckNumber ;\v\d+/\d+|\d+%(\.\d+)?;
syntax match sawbuckNumber ;\v#\d+;
syntax match sawbuckNumber ;\v[$€£] ?\d+%(\.\d+)?;
syntax match sawbuckNumber ;\v%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+) ?%(lb/cuft|lbs|lb|oz|kg/m3|kg/m³|kg/m2|kg|g|sqft|sqin|m2|m²|cuft|cuyd|mL|ml|L|l|m3|m³|gal|qt|psf|psi|pcf|kPa|kpa|Pa|min|hours|hour|h|days|day|weeks|week)%([A-Za-z0-9²³/])@!;
syntax match sawbuckNumber ;\v%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)['′’‘]%([ -]?%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”])?|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”]|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)%( ?%(ft|mm|cm|m)|in)%([A-Za-z0-9²³/])@!;
syntax match sawbuckNumber ;\v\d+,\d+%( ?%(mm|cm|m|kg|L|l|in|ft)%([A-Za-z0-9])@!|["'″′]);
syntax match sawbuckNumber ;\v\d+%(\.\d+)? ?\%;
syntax match sawbuckNumber ;\v\d+%(\.\d+)?%(°| ?deg%([A-Za-z0-9])@!);
syntax match sawbuckNumber ;\v\d+%(/\d+)?[x×]\d+%(/\d+)?%([A-Za-z0-9"'″′/]|\.\d)@!;
syntax match sawbuckNumber ;\v#\d+ ?[x×] ?%(%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)['′’‘]%([ -]?%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”])?|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”]|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)%( ?%(ft|mm|cm|m)|in)%([A-Za-z0-9²³/])@!)|\d+%(\.\d+)? ?[x×] ?\d+ ?mm;
syntax match sawbuckNumber ;\v%(^built\s+)@<=%(\d{1,4}-\d{1,2}-\d{1,4}|\d{1,4}\.\d{1,2}\.\d{1,4}|\d{1,4}/\d{1,2}/\d{1,4})%([A-Za-z0-9_./-])@!;
syntax match sawbuckNumber ;\v%(%(^\s+|,\s*)wear\s+)@<=%(\d{1,4}-\d{1,2}-\d{1,4}|\d{1,4}\.\d{1,2}\.\d{1,4}|\d{1,4}/\d{1,2}/\d{1,4})%([A-Za-z0-9_./-])@!; nextgroup=sawbuckText
syntax match sawbuckComment ;\v%(^|\s)@<=#%(\s.*|%(.)@!);
syntax match sawbuckClause ;\v%(^\s+|,\s*)@<=%(short\s+point\s+to\s+short\s+point|long\s+point\s+to\s+short\s+point|long\s+point\s+to\s+long\s+point|with\s+a\s+gap\s+at\s+each\s+end|at\s+each\s+corner\s+of|as\s+many\s+as\s+fit|drains\s+through|long\s+points\s+on|spread\s+between|diagonally\s+on|front\s+to\s+back|near\s+children|not\s+food\s+safe|near\s+a\s+guard|anchored\s+to|filled\s+with|floor\s+limit|grain\s+along|in\s+front\s+of|long\s+points|spread\s+over|tapering\s+to|carried\s+by|cut\s+to\s+fit|flush\s+with|foot\s+limit|no\s+ripping|written\s+by|bevels\s+to|clearance|drains\s+by|food\s+safe|heartwood|miters\s+to|right\s+end|saturated|then\s+wait|thickness|untreated|wide\s+face|at\s+least|centered|end\s+trim|in\s+pairs|language|left\s+end|measured|mirrored|moisture|no\s+drain|no\s+grain|of\s+which|outdoors|right\s+of|at\s+most|between|changed|coating|indoors|leaning|left\s+of|licence|on\s+edge|on\s+hand|outline|overall|overlap|painted|plywood|sloping|species|treated|upright|across|actual|angled|behind|bottom|box\s+of|budget|covers|inside|length|lumber|thread|tin\s+of|use\s+up|way\s+in|weighs|coats|dries|grows|lines|moist|notch|pilot|price|rough|space|spare|takes|tight|under|units|walls|width|bolt|dado|ends|flat|fold|from|keep|kerf|make|nail|rips|sold|used|uses|wait|wear|with|dry|has|tax|on)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!;
syntax match sawbuckClause ;\v%(^\s*place\s+[A-Za-zÀ-ÖØ-öø-ÿ_]%(-?[A-Za-z0-9À-ÖØ-öø-ÿ_])*-?\s+)@<=%(with\s+a\s+gap\s+at\s+each\s+end|at\s+each\s+corner\s+of|as\s+many\s+as\s+fit|spread\s+between|diagonally\s+on|front\s+to\s+back|in\s+front\s+of|long\s+points|spread\s+over|flush\s+with|wide\s+face|centered|mirrored|right\s+of|at\s+most|between|leaning|left\s+of|on\s+edge|sloping|upright|across|behind|tight|under|flat|from|on)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!;
syntax match sawbuckClause ;\v%(^\s+|,\s*)@<=%(anchored\s+to)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckClause ;\v%(^\s+|,\s*)@<=%(written\s+by)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckClause ;\v%(^\s+|,\s*)@<=%(licence)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckClause ;\v%(^\s+|,\s*)@<=%(changed)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckClause ;\v%(%(floor|foot)\s+limit%(\s+%(%(^built\s+)@<=%(\d{1,4}-\d{1,2}-\d{1,4}|\d{1,4}\.\d{1,2}\.\d{1,4}|\d{1,4}/\d{1,2}/\d{1,4})%([A-Za-z0-9_./-])@!|#\d+ ?[x×] ?%(%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)['′’‘]%([ -]?%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”])?|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”]|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)%( ?%(ft|mm|cm|m)|in)%([A-Za-z0-9²³/])@!)|\d+%(\.\d+)? ?[x×] ?\d+ ?mm|\d+%(/\d+)?[x×]\d+%(/\d+)?%([A-Za-z0-9"'″′/]|\.\d)@!|\d+%(\.\d+)?%(°| ?deg%([A-Za-z0-9])@!)|\d+%(\.\d+)? ?\%|\d+,\d+%( ?%(mm|cm|m|kg|L|l|in|ft)%([A-Za-z0-9])@!|["'″′])|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)['′’‘]%([ -]?%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”])?|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)["″“”]|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+)%( ?%(ft|mm|cm|m)|in)%([A-Za-z0-9²³/])@!|%(\d+%(-| )\d+[/⁄]\d+|\d+[/⁄]\d+|\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+\.\d+|\d+) ?%(lb/cuft|lbs|lb|oz|kg/m3|kg/m³|kg/m2|kg|g|sqft|sqin|m2|m²|cuft|cuyd|mL|ml|L|l|m3|m³|gal|qt|psf|psi|pcf|kPa|kpa|Pa|min|hours|hour|h|days|day|weeks|week)%([A-Za-z0-9²³/])@!|[$€£] ?\d+%(\.\d+)?|#\d+|\d+/\d+|\d+%(\.\d+)?|[A-Za-zÀ-ÖØ-öø-ÿ_]%(-?[A-Za-z0-9À-ÖØ-öø-ÿ_])*-?)\s+|\s*[^A-Za-z0-9_ \t]\s*))@<=by[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckClause ;\v%(^built\s+%(\d{1,4}-\d{1,2}-\d{1,4}|\d{1,4}\.\d{1,2}\.\d{1,4}|\d{1,4}/\d{1,2}/\d{1,4})%([A-Za-z0-9_./-])@!\s+)@<=by[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckBecause ;\vbecause[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckName ;\v[A-Za-zÀ-ÖØ-öø-ÿ_]%(-?[A-Za-z0-9À-ÖØ-öø-ÿ_])*-?; contained
syntax match sawbuckText ;\v\s+\S.*; contained
syntax match sawbuckEntry ;\v^%(assembly|enclosed|fastener|measure|accept|fasten|finish|bring|built|place|sheet|stock|tools|coat|fill|glue|line|load|must|note|part|plan|ring|roll|shop|step|yard|box)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!;
syntax match sawbuckEntry ;\v^%(assembly|fastener|measure|finish|sheet|stock|fill|part|ring|roll|box)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckName skipwhite
syntax match sawbuckEntry ;\v^%(enclosed|bring|note|plan|shop|step|yard)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!; nextgroup=sawbuckText
syntax match sawbuckEntry ;\v%(^\s+)@<=%(fasten|place|glue)[A-Za-z0-9À-ÖØ-öø-ÿ_-]@!;
syntax region sawbuckParens start=;(; end=;\v\)|$; transparent contains=ALLBUT,sawbuckClause,sawbuckEntry,sawbuckName,sawbuckText

" No colour goes on over lines.
syntax sync minlines=1 maxlines=1

highlight default link sawbuckComment Comment
highlight default link sawbuckEntry Statement
highlight default link sawbuckBecause Statement
highlight default link sawbuckClause Type
highlight default link sawbuckName Identifier
highlight default link sawbuckFunction Function
highlight default link sawbuckNumber Number
highlight default link sawbuckText String
highlight default link sawbuckSign Operator
highlight default link sawbuckRelation Delimiter

let b:current_syntax = "sawbuck"

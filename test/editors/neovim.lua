-- Works on a plan in Neovim, set up as README.md says, and writes down what came of it.
--
--   nvim --headless --clean -n -i NONE bench.sawbuck -S neovim.lua -c 'cq!'
--
-- Lua errors end it by the `cq!` behind. $FACTS is the file to write, $SETUP the configuration from README.md.
local facts = {}

local function wait(ready)
  return vim.wait(20000, ready, 20)
end

local function finish()
  facts.servers = #vim.lsp.get_active_clients()
  vim.fn.writefile({ vim.fn.json_encode(facts) }, os.getenv("FACTS"))
  for _, client in ipairs(vim.lsp.get_active_clients()) do
    client.stop()
  end
  facts.stopped = wait(function()
    return #vim.lsp.get_active_clients() == 0
  end)
  vim.fn.writefile({ vim.fn.json_encode(facts) }, os.getenv("FACTS"))
  vim.cmd("qa!")
end

-- The names of Neovim 0.11, as far as the configuration in README.md uses them: what they set up is started as there.
local configured = {}
if not vim.lsp.config then
  vim.lsp.config = function(name, config)
    configured[name] = config
  end
  vim.lsp.enable = function(name)
    local config = configured[name]
    vim.api.nvim_create_autocmd("FileType", {
      pattern = config.filetypes,
      callback = function(args)
        -- Neovim may tell of a file type twice; a server that runs is taken again, as 0.11 does.
        config.id = config.id
          or vim.lsp.start_client(vim.tbl_extend("force", { name = name, root_dir = vim.fn.getcwd() }, config))
        vim.lsp.buf_attach_client(args.buf, config.id)
      end,
    })
  end
  vim.g.do_filetype_lua = 1
end

local refreshed = {}
for _, what in ipairs({ "workspace/inlayHint/refresh", "workspace/codeLens/refresh" }) do
  vim.lsp.handlers[what] = function()
    refreshed[what] = true
    return vim.NIL
  end
end

dofile(os.getenv("SETUP"))
vim.cmd("doautocmd BufRead")
if vim.bo.filetype ~= "sawbuck" then
  -- Neovim finds file types in Lua where it is told to before it reads its first file; here that is too late.
  vim.bo.filetype = vim.filetype.match("bench.sawbuck", 0) or "sawbuck"
end

wait(function()
  local client = vim.lsp.get_active_clients()[1]
  return client and client.initialized and #vim.diagnostic.get(0) > 0
end)
local client = vim.lsp.get_active_clients()[1]
facts.capabilities = client.server_capabilities
facts.encoding = client.offset_encoding
facts.filetype = vim.bo.filetype

local function problems()
  return vim.tbl_map(function(d)
    return {
      code = d.code or (d.user_data and d.user_data.lsp and d.user_data.lsp.code),
      message = d.message,
      line = d.lnum,
      column = d.col,
      endLine = d.end_lnum,
      endColumn = d.end_col,
    }
  end, vim.diagnostic.get(0))
end
facts.problems = problems()

-- `find` in the first line that holds it, as the place under the cursor.
local function at(find, further)
  for n, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
    local found = line:find(find, 1, true)
    if found then
      vim.api.nvim_win_set_cursor(0, { n, found - 1 + (further or 0) })
      return vim.lsp.util.make_position_params(0, client.offset_encoding)
    end
  end
  error("no " .. find)
end

local function ask(method, params)
  local answers, problem = vim.lsp.buf_request_sync(0, method, params, 20000)
  if problem then
    error(method .. ": " .. problem)
  end
  local answer = answers[client.id]
  if answer and answer.error then
    error(method .. ": " .. answer.error.message)
  end
  return answer and answer.result
end

local function offered(name)
  local is = client.server_capabilities[name]
  return is ~= nil and is ~= false
end

local document = vim.lsp.util.make_text_document_params()
local last = vim.api.nvim_buf_line_count(0)
local whole = { start = { line = 0, character = 0 }, ["end"] = { line = last, character = 0 } }

facts.hover = ask("textDocument/hover", at("leg"))
local offers = ask("textDocument/completion", at("rim - 1", 3))
facts.completion = vim.tbl_map(function(item)
  return item.label
end, offers.items or offers)
facts.definition = ask("textDocument/definition", at("rim - 1"))
if offered("inlayHintProvider") then
  facts.hints = ask("textDocument/inlayHint", { textDocument = document, range = whole })
end
if offered("codeLensProvider") then
  facts.lenses = ask("textDocument/codeLens", { textDocument = document })
end
if offered("referencesProvider") then
  local params = at("rim - 1")
  params.context = { includeDeclaration = true }
  facts.references = ask("textDocument/references", params)
end
if offered("codeActionProvider") then
  local range = at("rimm").position
  facts.actions = ask("textDocument/codeAction", {
    textDocument = document,
    range = { start = range, ["end"] = range },
    context = { diagnostics = vim.lsp.diagnostic.get_line_diagnostics(0, range.line, {}, client.id) },
  })
end
if offered("documentFormattingProvider") then
  facts.format = ask("textDocument/formatting", { textDocument = document, options = { tabSize = 2, insertSpaces = true } })
end
if offered("renameProvider") then
  local params = at("rim - 1")
  params.newName = "rim-height"
  vim.lsp.util.apply_workspace_edit(ask("textDocument/rename", params), client.offset_encoding)
  facts.renamed = vim.api.nvim_buf_get_lines(0, 0, -1, false)
  vim.cmd("undo")
end

-- Behind letters that are two units of UTF-16 and four bytes: an edit there, and what the server then has.
local found = at("🪚")
local line = vim.api.nvim_get_current_line()
vim.api.nvim_buf_set_lines(0, found.position.line, found.position.line + 1, false, { (line:gsub("rimm", "rim")) })
facts.mended = wait(function()
  for _, one in ipairs(problems()) do
    if one.message:find("rimm", 1, true) then
      return false
    end
  end
  return true
end)
line = vim.api.nvim_get_current_line()
vim.api.nvim_buf_set_lines(0, found.position.line, found.position.line + 1, false, { (line:gsub("🪚, ", "")) })
facts.cleared = wait(function()
  return #vim.diagnostic.get(0) == 0
end)
facts.left = problems()
finish()

-- A writing session in Neovim, with the settings that the README gives: the
-- editor's own client, buffers and windows. Each step waits for the event that
-- it is about, in the editor's own callbacks.
local dir = vim.fn.getcwd()
local buf, client, session
vim.o.virtualedit = "onemore" -- the place behind a line, as while one types

local function go(...)
  local ok, err = coroutine.resume(session, ...)
  if not ok then
    io.stderr:write(debug.traceback(session, err) .. "\n")
    vim.cmd("cquit 1")
  end
end

-- ask asks the server once it has been told what changed in a buffer: without
-- another, in the procedure's.
local function ask(method, params, at)
  client.request(method, params, function(err, result) vim.schedule(function() go(err, result) end) end, at or buf)
  local err, result = coroutine.yield()
  assert(not err, vim.inspect(err))
  return result
end

-- handled lets the editor's own handler do its work, and goes on when it has.
local function handled(method)
  local own = vim.lsp.handlers[method]
  vim.lsp.handlers[method] = function(...)
    local a, b = own(...)
    vim.schedule(function() go(a, b) end)
    return a, b
  end
end

local function text() return table.concat(vim.api.nvim_buf_get_lines(buf, 0, -1, false), "\n") .. "\n" end

local function write(from, to)
  local here = text()
  local at, stop = here:find(from, 1, true)
  assert(at, from .. " is not in\n" .. here)
  local all = here:sub(1, at - 1) .. to .. here:sub(stop + 1)
  vim.api.nvim_buf_set_lines(buf, 0, -1, false, vim.split(all:gsub("\n$", ""), "\n"))
  ask("baybinder/settled", vim.empty_dict())
end

local function cursor(words, more)
  for n, line in ipairs(vim.api.nvim_buf_get_lines(buf, 0, -1, false)) do
    local at = line:find(words, 1, true)
    if at then
      return vim.api.nvim_win_set_cursor(0, { n, at - 1 + (more or 0) })
    end
  end
  error(words .. " is not in\n" .. text())
end

local function codes()
  local out = {}
  for _, d in ipairs(vim.diagnostic.get(buf)) do
    table.insert(out, d.code or d.user_data.lsp.code)
  end
  table.sort(out)
  return table.concat(out, " ")
end

local function position() return vim.lsp.util.make_position_params(0, client.offset_encoding) end

local function offers()
  local items = ask("textDocument/completion", position()).items
  table.sort(items, function(a, b) return (a.sortText or a.label) < (b.sortText or b.label) end)
  return items
end

local function take(item)
  local edits = { item.textEdit }
  for _, e in ipairs(item.additionalTextEdits or {}) do table.insert(edits, e) end
  vim.lsp.util.apply_text_edits(edits, buf, client.offset_encoding)
  ask("baybinder/settled", vim.empty_dict())
end

-- mend takes the quick mend of a title, as a writer chooses it from the list.
local function mend(title)
  local chosen
  vim.ui.select = function(items, _, choice)
    for _, item in ipairs(items) do
      if (item[2] or item.action).title == title then
        chosen = item
        choice(item)
      end
    end
    vim.schedule(go)
  end
  vim.lsp.buf.code_action()
  coroutine.yield()
  assert(chosen, title .. " is not offered")
  ask("baybinder/settled", vim.empty_dict())
end

local function equal(got, want) assert(got == want, ("got %q, want %q"):format(vim.inspect(got), vim.inspect(want))) end

session = coroutine.create(function()
  ask("baybinder/settled", vim.empty_dict())
  equal(codes(), "")

  -- A step is begun, and written from what is offered first.
  write("1. Tell the foreman.\n", "1. Tell the foreman.\n2. \n")
  cursor("2. ", 3)
  local first = offers()[1]
  equal(first.label, "Switch off at the plug")
  take(first)
  assert(text():find("2. [Switch off at the plug](isolate:plug) and [put your lock on it](lock:plug).", 1, true), text())
  equal(codes(), "left-isolated")

  -- A slip is told as it is typed, and mended by what is offered.
  write("1. Clean the seat.\n", "1. Clean the seat 🔧 [off](remove:saet).\n")
  assert(codes():find("unknown-reference", 1, true), codes())
  cursor("[off]")
  mend("write seat")
  assert(text():find("(remove:seat).", 1, true), text())
  write("(remove:seat).", "(remove:seat) with the [](tool:socket-13).")
  cursor("[](tool")
  mend("list it: socket-13")
  assert(not codes():find("not-listed", 1, true), codes())

  -- An address is completed.
  write("1. Sweep the floor.\n", "1. [Unlock the plug](unlock:plug).\n2. [Back](reverse:strip)\n3. [On](restore:\n")
  cursor("restore:", 8)
  local ids = {}
  for _, item in ipairs(offers()) do ids[item.label] = true end
  assert(ids.plug and ids.power, vim.inspect(ids))
  write("[On](restore:\n", "[On](restore:power).\n")

  -- What is here, in the editor's own window.
  handled("textDocument/hover")
  cursor("remove:seat", 9)
  vim.lsp.buf.hover()
  local shown = coroutine.yield()
  local words = table.concat(vim.api.nvim_buf_get_lines(shown, 0, -1, false), "\n")
  assert(words:find("held by: 4 bolt", 1, true) and words:find("seat off", 1, true), words)

  -- A rename goes through the manual: the text that is not saved, and the file.
  handled("textDocument/rename")
  cursor("remove:seat", 9)
  vim.lsp.buf.rename("bench")
  coroutine.yield()
  assert(text():find("(remove:bench)", 1, true), text())
  local machine = vim.fn.bufnr(dir .. "/machines/rig.yaml")
  local rig = table.concat(vim.api.nvim_buf_get_lines(machine, 0, -1, false), "\n")
  assert(rig:find("bench: { name: seat", 1, true) and rig:find("under: [bench]", 1, true), rig)
  ask("baybinder/settled", vim.empty_dict(), machine)

  -- It leads to where the part is written.
  handled("textDocument/definition")
  cursor("remove:bench", 9)
  vim.lsp.buf.definition()
  coroutine.yield()
  equal(vim.api.nvim_get_current_buf(), machine)
  assert(vim.api.nvim_get_current_line():find("bench", 1, true), vim.api.nvim_get_current_line())

  -- What is saved is what check reads.
  vim.cmd("silent wall")
  io.stdout:write("whole session done\n")
  vim.cmd("qall!")
end)
-- The session begins when the settings' own client has the buffer.
local start = vim.lsp.start_client
vim.lsp.start_client = function(config)
  config.on_attach = function(attached, at)
    if not client then
      client, buf = attached, at
      vim.schedule(go)
    end
  end
  return start(config)
end

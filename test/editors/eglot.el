;; Works on a plan in Emacs with Eglot, set up as README.md says, and writes down what came of it.  -*- lexical-binding: t -*-
;;
;;   emacs -q --batch -l eglot.el
;;
;; $FACTS is the file to write, $SETUP the configuration from README.md.
(package-initialize)
(require 'eglot)
(require 'flymake)
(require 'json)

(setq eglot-sync-connect 20
      eglot-autoshutdown t
      eglot-confirm-server-initiated-edits nil
      eglot-events-buffer-size 0
      flymake-no-changes-timeout 0.05
      make-backup-files nil
      create-lockfiles nil)
(load (getenv "SETUP") nil t)

(defvar facts nil)
(defun note (name value) (push (cons name value) facts))
(defun write-facts ()
  (let ((coding-system-for-write 'utf-8))
    (with-temp-file (getenv "FACTS") (insert (json-serialize facts :null-object nil :false-object :json-false)))))
(defun wait-for (ready)
  (let ((end (+ (float-time) 20)) found)
    (while (and (not (setq found (funcall ready))) (< (float-time) end))
      ;; What watches files tells of it as an event.
      (read-event nil nil 0.05)
      (accept-process-output nil 0.02))
    found))

(find-file "bench.sawbuck")
(run-hooks 'post-command-hook)          ; in which `eglot-ensure' starts the server
(unless (eglot-managed-p) (error "No server for %s" major-mode))
(define-key global-map [t] #'ignore)

(defun server () (eglot--current-server-or-lose))
(defun problems ()
  (flymake-start)
  (vconcat
   (mapcar (lambda (d)
             (let ((text (flymake-diagnostic-text d)))
               `((message . ,(substring-no-properties text))
                 (begin . ,(1- (flymake-diagnostic-beg d)))
                 (end . ,(1- (flymake-diagnostic-end d))))))
           (flymake-diagnostics))))
(defun at (find &optional further)
  (goto-char (point-min))
  (search-forward find)
  (goto-char (+ (match-beginning 0) (or further 0)))
  (eglot--TextDocumentPositionParams))
(defun ask (method params) (jsonrpc-request (server) method params :timeout 20))
(defun offered (name) (not (memq (plist-get (eglot--capabilities (server)) name) '(nil :json-false))))
(defun range-of-all () (list :start '(:line 0 :character 0) :end (list :line (count-lines (point-min) (point-max)) :character 0)))

(note 'capabilities (eglot--capabilities (server)))
(note 'filetype (symbol-name major-mode))
(wait-for (lambda () (problems) (flymake-diagnostics)))
(note 'problems (problems))
(note 'hover (ask :textDocument/hover (at "leg")))
(note 'completion
      (let ((found (ask :textDocument/completion (at "rim - 1" 3))))
        (vconcat (mapcar (lambda (item) (plist-get item :label)) (if (vectorp found) found (plist-get found :items))))))
(note 'definition (ask :textDocument/definition (at "rim - 1")))
(let ((document (eglot--TextDocumentIdentifier)))
  (when (offered :inlayHintProvider)
    (note 'hints (ask :textDocument/inlayHint (list :textDocument document :range (range-of-all)))))
  (when (offered :codeLensProvider)
    (note 'lenses (ask :textDocument/codeLens (list :textDocument document))))
  (when (offered :referencesProvider)
    (note 'references
          (ask :textDocument/references (append (at "rim - 1") (list :context '(:includeDeclaration t))))))
  (when (offered :codeActionProvider)
    (at "rimm")
    (note 'actions
          (ask :textDocument/codeAction
               (list :textDocument document
                     :range (list :start (eglot--pos-to-lsp-position) :end (eglot--pos-to-lsp-position))
                     :context (list :diagnostics
                                    (vconcat (delq nil (mapcar (lambda (d) (cdr (assoc 'eglot-lsp-diag (eglot--diag-data d))))
                                                               (flymake-diagnostics (point))))))))))
  (when (offered :documentFormattingProvider)
    (note 'format
          (ask :textDocument/formatting (list :textDocument document :options '(:tabSize 2 :insertSpaces t)))))
  (when (offered :renameProvider)
    (at "rim - 1")
    (let ((before (buffer-string)))
      (eglot-rename "rim-height")
      (note 'renamed (vconcat (split-string (buffer-substring-no-properties (point-min) (point-max)) "\n")))
      (erase-buffer)
      (insert before)
      (eglot--signal-textDocument/didChange))))

;; Behind letters that are two units of UTF-16: an edit there, and what the server then has.
(defun told (what)
  (seq-some (lambda (d) (string-match-p (regexp-quote what) (flymake-diagnostic-text d))) (flymake-diagnostics)))
(at "rimm")
(delete-char 4)
(insert "rim")
(eglot--signal-textDocument/didChange)
(note 'mended (if (wait-for (lambda () (problems) (not (told "rimm")))) t :json-false))
(at "🪚, ")
(delete-char 3)
(eglot--signal-textDocument/didChange)
(note 'cleared (if (wait-for (lambda () (problems) (null (flymake-diagnostics)))) t :json-false))
(note 'left (problems))

(note 'servers (apply #'+ (mapcar #'length (hash-table-values eglot--servers-by-project))))

;; The shop file changes on disk, under the open plan.
(with-temp-file "shop.sawbuck" (insert "stock beam of 2x4, sold 8' $4\n"))
(note 'watched (if (wait-for (lambda () (problems) (told "post"))) t :json-false))

(set-buffer-modified-p nil)
(eglot-shutdown (server))
(note 'stopped t)
(write-facts)
(kill-emacs 0)

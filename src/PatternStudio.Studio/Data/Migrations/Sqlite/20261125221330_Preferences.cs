using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace PatternStudio.Studio.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Preferences : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Preferences",
                columns: table => new
                {
                    AccountId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Lengths = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Decimals = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Dates = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    LeftHanded = table.Column<bool>(type: "INTEGER", nullable: false),
                    TourDone = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Preferences", x => x.AccountId);
                    table.ForeignKey(
                        name: "FK_Preferences_Accounts_AccountId",
                        column: x => x.AccountId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Preferences");
        }
    }
}
